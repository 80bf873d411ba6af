import { useEffect, useMemo, useState } from "react";
import { addressOf } from "../reading/address";
import type { ColumnMap } from "../reading/columns";
import type { Grid } from "../reading/grid";
import { recogniseColumns } from "../reading/recogniseColumns";
import { recallColumnMap, rememberColumnMap } from "../sheet/columnMaps";

/** How selected cells are read, and the means to correct it. */
export type Columns = {
  readonly grid: Grid;
  readonly map: ColumnMap;
  readonly setMap: (map: ColumnMap) => void;
};

export type SelectedCells = { readonly grid: Grid; readonly sheetId: string };

/**
 * How the cells are read: as the coach has corrected it, now or on an earlier day, else as recognised. Corrections hold
 * for as long as the same headings stand at the same place.
 */
export function useColumns({ grid, sheetId }: SelectedCells): Columns {
  const [corrected, setCorrected] = useState<Corrected | null>(null);
  const place = `${sheetId}!${addressOf(grid, 0, 0)}`;
  const recognised = useMemo(() => recogniseColumns(grid), [grid]);
  const headings = headingsOf(recognised).join("\n");

  useEffect(() => {
    let current = true;
    recallColumnMap(place, headings.split("\n")).then(
      (map) =>
        current &&
        map &&
        setCorrected((before) => (before?.place === place ? before : { place, map, isOfEarlierDay: true })),
      // What cannot be recalled is recognised afresh: nothing is lost but a correction.
      () => {},
    );
    return () => {
      current = false;
    };
  }, [place, headings]);

  return useMemo(() => {
    const fits = corrected?.place === place && corrected.map.columns.length === recognised.columns.length;
    return {
      grid,
      map: fits ? correctedMap(corrected, recognised) : recognised,
      setMap: (map) => {
        setCorrected({ place, map, isOfEarlierDay: false });
        // Not to be remembered (a protected workbook) is no reason to stop: the correction holds while the pane is open.
        rememberColumnMap(place, headingsOf(map), map).catch(() => {});
      },
    };
  }, [grid, recognised, place, corrected]);
}

type Corrected = {
  readonly place: string;
  readonly map: ColumnMap;
  /** Whether it was recalled: the sheet may hold another day's results by now. */
  readonly isOfEarlierDay: boolean;
};

const correctedMap = ({ map, isOfEarlierDay }: Corrected, recognised: ColumnMap): ColumnMap =>
  isOfEarlierDay ? { ...map, date: recognised.date ?? map.date } : map;

const headingsOf = (map: ColumnMap): string[] => map.columns.map((column) => column.heading);
