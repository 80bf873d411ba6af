import { z } from "zod";
import { words } from "../words";
import { Amount } from "./Amount";
import { Choice } from "./Choice";

/** One control per setting, made from a schema of `analyses/fields.ts`: a list for a choice, a number for an amount. */
export function SchemaForm(props: {
  readonly title: string;
  readonly schema: z.ZodObject;
  readonly settings: Readonly<Record<string, unknown>>;
  readonly onChange: (name: string, value: unknown) => void;
}) {
  const { properties } = z.toJSONSchema(props.schema) as unknown as {
    readonly properties: Readonly<Record<string, SettingSchema>>;
  };
  return (
    <section className="card" aria-labelledby="settings-title">
      <h2 id="settings-title">{props.title}</h2>
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
