/** Words beside a count of spokes, or a diameter, by which it is the steering wheel's: one wheel, its rim, its horn. Common practice. */
export const ofSteeringWheel =
  /\b(?:steering|banjo|bakelite|horn|wood(?:en)?[- ]rim(?:med)?|leather[- ](?:wheel|rim)|rim and|column(?:'s)?|grip|airbag)\b|\b(?:here's|there's|and) (?:the|a) wheel\b/;
