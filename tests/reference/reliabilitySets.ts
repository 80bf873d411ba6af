import { expected, rows } from "./reference";

/** Every dataset of athletes by sessions, with the reliability that R computes from it. */
export const reliabilitySets = [
  set("shrout_fleiss", ["J1", "J2", "J3", "J4"], "reliability"),
  set("bland_altman_1986_pefr", ["wright1", "wright2"], "reliability_wright"),
  set("bland_altman_1986_pefr", ["mini1", "mini2"], "reliability_mini"),
  set("sleepstudy_day0_2", ["day0", "day1", "day2"], "reliability"),
  set("orthodont", ["age8", "age10", "age12", "age14"], "reliability"),
  set("orthodont_missing", ["age8", "age10", "age12", "age14"], "complete_cases"),
  set("ergostool", ["T1", "T2", "T3", "T4"], "reliability"),
  set("sleep_student", ["drug1", "drug2"], "reliability"),
  set("shoes_pairs", ["left_A", "right_B"], "reliability"),
];

function set(dataset: string, columns: readonly string[], key: string) {
  return { name: `${dataset} ${columns[0]}`, results: rows(dataset, columns), reference: expected(dataset)[key] };
}
