import { changeOfDirectionDeficit } from "../engine/sprints/changeOfDirectionDeficit";
import { electronicTime as electronicTimeOf } from "../engine/sprints/electronicTime";
import { splitVelocities as splitVelocitiesOf } from "../engine/sprints/splitVelocities";
import { measured, numberOf } from "./border";
import { cellByCell, part, rowByRow } from "./spill";

/**
 * Mean velocity of each interval between timing gates, one row for each athlete. A missing split joins its two intervals; the first
 * interval holds the start. Empty cells and zeros are missing splits.
 * @customfunction SPLITVELOCITIES
 * @param distances Distances of the gates from the start in m: one row for all athletes, e.g. C3:F3.
 * @param times Times at the gates since the start in s, a row for each athlete, e.g. C4:F29.
 * @returns Velocities in m/s, each below its gate; an empty cell where the split is missing.
 * @example =TAPELINE.SPLITVELOCITIES({5,10,20,30},{1.05,1.82,3.14,4.38})
 * @source Kinematics.
 */
export function splitVelocities(distances: any[][], times: any[][]): any[][] {
  const splits = measured(times);
  return rowByRow({ times: splits, distances: measured(distances) }, splits[0]?.length ?? 0, (athlete) =>
    part(splitVelocitiesOf(athlete.distances, athlete.times), ({ intervals }) =>
      athlete.times.map(
        (time, gate) =>
          intervals.find(({ toDistance }) => time !== null && toDistance === athlete.distances[gate])?.velocity ?? null,
      ),
    ),
  );
}

/**
 * Change-of-direction deficit, 505 time less the time of a straight 10 m, one for each cell. With 20 m times the straight is the one
 * from 10 to 20 m (the flying variant): keep to one. Empty cells and zeros are missing.
 * @customfunction CODDEFICIT
 * @param turnTimes Times of the 505 in s, e.g. C4:C29.
 * @param tenMetreTimes Straight 10 m times of the same day and start in s, e.g. D4:D29.
 * @param [twentyMetreTimes] Straight 20 m times of the same run in s, e.g. E4:E29; when left out, the first 10 m count.
 * @returns Deficit in s, e.g. 0.65.
 * @example =TAPELINE.CODDEFICIT({2.48;2.55},{1.83;1.86})
 * @source Nimphius et al. 2016, J Strength Cond Res 30:3024-3032 (abstract read).
 */
export function changeOfDirection(turnTimes: any[][], tenMetreTimes: any[][], twentyMetreTimes?: any[][]): any[][] {
  const times = { "505 time": measured(turnTimes), "10 m time": measured(tenMetreTimes) };
  if (!twentyMetreTimes) {
    return cellByCell(times, (run) =>
      part(
        changeOfDirectionDeficit(run["505 time"], { straight: "first 10 m", tenMetres: run["10 m time"] }),
        ({ seconds }) => seconds,
      ),
    );
  }
  return cellByCell({ ...times, "20 m time": measured(twentyMetreTimes) }, (run) =>
    part(
      changeOfDirectionDeficit(run["505 time"], {
        straight: "10 to 20 m",
        tenMetres: run["10 m time"],
        twentyMetres: run["20 m time"],
      }),
      ({ seconds }) => seconds,
    ),
  );
}

/**
 * Approximate electronic time of a hand-timed sprint: hand time plus a correction, true to about 0.1 s, one for each cell. Never to be
 * ranked with electronic times. Empty cells and zeros are missing.
 * @customfunction ELECTRONICTIME
 * @param handTimes Hand times in s, e.g. C4:C29.
 * @param [correction] Seconds to add, e.g. 0.24 (when left out, the convention of athletics); 0.22 to 0.31 were measured.
 * @returns Time in s, e.g. 4.54.
 * @example =TAPELINE.ELECTRONICTIME({4.3;4.5})
 * @source 0.24 s is an athletics convention (as quoted by secondary pages); measured 0.31 s, Mayhew et al. 2010, and 0.22 and 0.26 s, Mann et al. 2015, J Strength Cond Res 29:1509-1514 (abstracts read).
 */
export function electronicTime(handTimes: any[][], correction?: any): any[][] {
  const added = numberOf(correction, "correction", 0.24);
  return cellByCell({ "hand time": measured(handTimes) }, (run) =>
    part(electronicTimeOf(run["hand time"], { correction: added }), ({ seconds }) => seconds),
  );
}
