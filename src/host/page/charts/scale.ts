/** A stretch of numbers laid along a stretch of pixels, with round marks on it. */
export type Scale = {
  readonly at: (value: number) => number;
  readonly minimum: number;
  readonly maximum: number;
  readonly marks: readonly number[];
  readonly label: (mark: number) => string;
};

export type Stretch = { readonly from: number; readonly to: number };

/**
 * A scale with marks at 1, 2 or 5 times a power of ten. Ends that are `null` are found from the values: outwards to a
 * mark, and to zero where `fromZero` says so, since the length of a bar means its value.
 */
export function numberScale(
  values: readonly number[],
  pixels: Stretch,
  ends: { minimum: number | null; maximum: number | null },
  options: { fromZero: boolean; marks: number },
): Scale {
  const zero = options.fromZero ? [0] : [];
  const all = values.length > 0 ? [...values, ...zero] : [0, 1];
  let [low, high] = [ends.minimum ?? Math.min(...all), ends.maximum ?? Math.max(...all)];
  if (high <= low) [low, high] = low === 0 ? [0, 1] : [low - Math.abs(low) / 10, low + Math.abs(low) / 10];
  const step = roundStep((high - low) / Math.max(1, options.marks));
  const minimum = ends.minimum ?? Math.floor(low / step + 1e-9) * step;
  const maximum = ends.maximum ?? Math.ceil(high / step - 1e-9) * step;
  const first = Math.ceil(minimum / step - 1e-9);
  const count = Math.floor(maximum / step + 1e-9) - first + 1;
  const marks = Array.from({ length: count }, (_, index) => (first + index) * step);
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  return {
    at: (value) => pixels.from + ((value - minimum) / (maximum - minimum)) * (pixels.to - pixels.from),
    minimum,
    maximum,
    marks,
    label: (mark) => (Math.abs(mark) < step / 1e6 ? 0 : mark).toFixed(decimals).replace("-", "\u2212"),
  };
}

function roundStep(wanted: number): number {
  const power = 10 ** Math.floor(Math.log10(wanted));
  return power * ([1, 2, 5].find((factor) => factor * power >= wanted * 0.999) ?? 10);
}

/** Places for categories: each has a band of its own. */
export type Bands = { readonly middle: (index: number) => number; readonly width: number };

export function bandsAlong(count: number, pixels: Stretch, reversed: boolean): Bands {
  const width = (pixels.to - pixels.from) / Math.max(1, count);
  return {
    middle: (index) => pixels.from + width * ((reversed ? count - 1 - index : index) + 0.5),
    width: Math.abs(width),
  };
}
