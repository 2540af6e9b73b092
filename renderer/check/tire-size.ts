/** A tire as the drawing needs it. */
export interface TireShape {
  /** Overall diameter, millimetres. */
  readonly overallMm: number;
  readonly rimMm: number;
  readonly widthMm: number;
}

const millimetresPerInch = 25.4;

/**
 * The shape of a tire size as claims carry it: metric (235/60R15: width in mm, height in percent of it, rim in inches) or
 * flotation (31x10.50R15: overall diameter, width and rim in inches). Sizes in letters and old numeric ones name no height; they give null.
 */
export function tireShape(value: string | number): TireShape | null {
  const text = String(value);
  const metric = /^(?:P|LT)?(\d{3})\/(\d{2})(?:Z?R|-|B|D)(\d{2}(?:\.\d)?)$/i.exec(text);
  if (metric) {
    const [width, aspect, rim] = metric.slice(1).map(Number) as [number, number, number];
    return { overallMm: rim * millimetresPerInch + (2 * width * aspect) / 100, rimMm: rim * millimetresPerInch, widthMm: width };
  }
  const flotation = /^(\d{2}(?:\.\d+)?)x(\d{1,2}(?:\.\d+)?)(?:R|-)(\d{2}(?:\.\d)?)$/i.exec(text);
  if (flotation) {
    const [overall, width, rim] = flotation.slice(1).map(Number) as [number, number, number];
    return { overallMm: overall * millimetresPerInch, rimMm: rim * millimetresPerInch, widthMm: width * millimetresPerInch };
  }
  return null;
}
