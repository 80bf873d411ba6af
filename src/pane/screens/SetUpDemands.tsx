import { useState } from "react";
import { demandTemplates } from "../../programme/demandTemplates";
import { type DemandWeights, demandWeights, weightsToWrite } from "../../programme/demandWeights";
import { goTo } from "../../sheet/goTo";
import { type WeightsWritten, writeWeights } from "../../sheet/writeWeights";
import type { Background } from "../../store/background";
import { Choice } from "../parts/Choice";
import { HostTrouble } from "../parts/HostTrouble";
import { Message } from "../parts/Message";
import { useDeed } from "../useDeed";
import { words } from "../words";
import { demandWords } from "../words/demands";
import "./setUpDemands.css";
import { useWorkbook } from "../workbook";

export const noSport = "";

/** The sports there are templates for, and none. */
export function SportChoice(props: { readonly sport: string; readonly onChange: (sport: string) => void }) {
  return (
    <Choice
      label={demandWords.sport}
      meaning={demandWords.sportMeaning}
      value={props.sport}
      options={[[noSport, demandWords.none], ...demandTemplates.map(({ sport }) => [sport, sport] as const)]}
      onChange={props.onChange}
    />
  );
}

/** What the template of a sport says of squad and battery; null where no sport is chosen. */
export function demandsOfSport(sport: string, background: Background): DemandWeights | null {
  const template = demandTemplates.find((one) => one.sport === sport);
  return template ? demandWeights(template, background) : null;
}

/** What the template cannot know about this squad and battery. */
export function DemandGaps({ demands }: { readonly demands: DemandWeights }) {
  const { unknownRoles, unknownQualities, untested } = demands;
  return (
    <>
      {unknownRoles.length > 0 && <p>{demandWords.unknownRoles(unknownRoles)}</p>}
      {unknownQualities.length > 0 && <p>{demandWords.unknownQualities(unknownQualities)}</p>}
      {untested.length > 0 && <p className="quiet">{demandWords.untested(untested)}</p>}
    </>
  );
}

/** Fills the table of weights from the template of a sport; numbers of the coach's own are kept, unless told otherwise. */
export function SetUpDemands() {
  const { background } = useWorkbook();
  const [sport, choose] = useState<string>(noSport);
  const [replaces, setReplaces] = useState(false);
  const writing = useDeed<WeightsWritten>();
  const demands = demandsOfSport(sport, background);
  const plan = demands && weightsToWrite(demands.weights, background, { replaces });
  const { outcome } = writing;
  return (
    <section className="card set-up-demands" aria-labelledby="demands-title">
      <h2 id="demands-title">{demandWords.title}</h2>
      <SportChoice sport={sport} onChange={choose} />
      {demands && plan && (
        <>
          <DemandGaps demands={demands} />
          {plan.coachs > 0 && (
            <Choice
              label={demandWords.own(plan.coachs)}
              value={replaces ? "replace" : "keep"}
              options={[
                ["keep", demandWords.keep],
                ["replace", demandWords.replace],
              ]}
              onChange={(value) => setReplaces(value === "replace")}
            />
          )}
          <p>{plan.weights.length === 0 ? demandWords.nothingToWrite : demandWords.weights(plan.weights.length)}</p>
          <button
            type="button"
            className="button"
            disabled={writing.busy || plan.weights.length === 0}
            onClick={() => void writing.run(() => writeWeights(plan.weights))}
          >
            {writing.busy ? words.write.writing : demandWords.write(sport)}
          </button>
        </>
      )}
      {writing.error !== null && <HostTrouble error={writing.error} />}
      {outcome?.inTheWay && (
        <Message tone="trouble" title={demandWords.notWritten}>
          <p>{outcome.inTheWay.why}</p>
          <button
            type="button"
            className="link"
            onClick={() => void goTo(outcome.inTheWay!.sheet, outcome.inTheWay!.cell)}
          >
            {words.write.show}
          </button>
        </Message>
      )}
      {outcome && !outcome.inTheWay && (
        <Message tone="good" title={demandWords.written(outcome.sheet, outcome.written)}>
          <p>{demandWords.writtenText}</p>
          <button type="button" className="link" onClick={() => void goTo(outcome.sheet, "A1")}>
            {words.write.show}
          </button>
        </Message>
      )}
    </section>
  );
}
