import { type AttributeName, attributeNames } from "../../shared-types/index.ts";

export type Attribute = AttributeName;

/**
 * The attributes that annotators list every time. Condition, presence and originality are listed only where they take part in
 * something, which is a judgement about conflicts and not about claims.
 */
export const annotatedAttributes: readonly Attribute[] = attributeNames.filter(
  (attribute) => attribute !== "condition" && attribute !== "presence" && attribute !== "originality",
);
