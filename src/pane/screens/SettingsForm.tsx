import { z } from "zod";
import type { AnyAnalysis } from "../../analyses/analysis";
import { Amount } from "../parts/Amount";
import { Choice } from "../parts/Choice";
import { words } from "../words";

/** One control per setting, made from the analysis' own schema: a list for a choice, a number for an amount. */
export function SettingsForm(props: {
  readonly analysis: AnyAnalysis;
  readonly settings: Readonly<Record<string, unknown>>;
  readonly onChange: (name: string, value: unknown) => void;
}) {
  const { properties } = z.toJSONSchema(props.analysis.settings) as unknown as {
    readonly properties: Readonly<Record<string, SettingSchema>>;
  };
  return (
    <section className="card" aria-labelledby="settings-title">
      <h2 id="settings-title">{words.settings.title}</h2>
      {Object.entries(properties).map(([name, setting]) => {
        const { label, meaning } = setting;
        const change = (value: unknown) => props.onChange(name, value);
        if ("choices" in setting) {
          return (
            <Choice
              key={name}
              label={label}
              meaning={meaning}
              value={String(props.settings[name])}
              options={Object.entries(setting.choices)}
              onChange={change}
            />
          );
        }
        const { minimum, maximum, unit } = setting;
        return (
          <Amount
            key={name}
            label={label}
            meaning={meaning}
            unit={unit}
            value={Number(props.settings[name])}
            low={minimum}
            high={maximum}
            trouble={words.settings.range(minimum, maximum, unit)}
            onChange={change}
          />
        );
      })}
    </section>
  );
}

/** A setting as zod describes it, with the meta data of analyses/fields.ts. */
type SettingSchema = { readonly label: string; readonly meaning: string } & (
  | { readonly choices: Readonly<Record<string, string>> }
  | { readonly minimum: number; readonly maximum: number; readonly unit: string }
);
