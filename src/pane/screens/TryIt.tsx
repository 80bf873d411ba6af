import { findTrySample, startTrySample } from "../../sheet/trySample";
import { HostTrouble } from "../parts/HostTrouble";
import { useDeed } from "../useDeed";
import { useReading } from "../useReading";
import { tryItWords } from "../words/tryIt";
import { useWorkbook } from "../workbook";

/** Offers, in a workbook that holds nothing of ours yet, a sample squad to try things on. */
export default function TryIt() {
  const { present } = useWorkbook();
  return present.size > 0 ? null : <Offer />;
}

/** Whether a sample stands already is read only where it may be offered. */
function Offer() {
  const { value: found } = useReading(async () => ({ sample: await findTrySample() }));
  const starting = useDeed<Awaited<ReturnType<typeof startTrySample>>>();
  if (found === null || found.sample !== null) return null;
  const start = () => void starting.run(startTrySample);
  return (
    <section className="try-it">
      <button type="button" className="link" disabled={starting.busy} onClick={start}>
        {tryItWords.offer}
      </button>
      <span className="quiet">{tryItWords.offerText}</span>
      {starting.error !== null && <HostTrouble error={starting.error} again={start} />}
    </section>
  );
}
