import type { QualityProfile } from "../../programme/qualityProfile";
import { writeComparison } from "../../sheet/writeComparison";
import { comparisons } from "../../store/comparison";
import { Choice } from "../parts/Choice";
import { HostTrouble } from "../parts/HostTrouble";
import { useDeed } from "../useDeed";
import { priorityWords } from "../words/priorities";
import { useWorkbook } from "../workbook";

const words = priorityWords.comparison;

/** Fewer than this, and it is said how little so few say about each other. Common practice, no source. */
const small = 10;

/** Whom athletes are compared with; what is small, and who cannot be compared with their own, is told. */
export function PrioritiesCompared({ profiles }: { readonly profiles: readonly QualityProfile[] }) {
  const { background } = useWorkbook();
  const writing = useDeed<Awaited<ReturnType<typeof writeComparison>>>();
  const comparison = background.comparedWith ?? "squad";
  const circles = [...new Map(profiles.map(({ comparedWith }) => [comparedWith.name, comparedWith])).values()];
  const fallback =
    comparison === "squad"
      ? []
      : profiles
          .filter(({ comparedWith, qualities }) => comparedWith.among === null && qualities.some(({ z }) => z !== null))
          .map(({ athlete }) => athlete);
  return (
    <section className="card" aria-labelledby="compared-title">
      <h2 id="compared-title">{words.title}</h2>
      <Choice
        label={words.label}
        meaning={words.meaning}
        value={comparison}
        options={comparisons.map((one) => [one, words.options[one]] as const)}
        onChange={(chosen) => void writing.run(() => writeComparison(chosen))}
      />
      {writing.error !== null && <HostTrouble error={writing.error} />}
      {circles
        .filter(({ athletes }) => athletes < small)
        .map(({ name, athletes }) => (
          <p className="quiet" key={name}>
            {words.small(name, athletes)}
          </p>
        ))}
      {fallback.length > 0 && <p className="quiet">{words.fallback(fallback)}</p>}
    </section>
  );
}
