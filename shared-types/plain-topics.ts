import type { Conflict } from "./analysis.ts";

/**
 * A topic as people say it: "actual mileage" for "mileage being actual". The analysis keeps the other wording, since the names that rulings
 * hang on are made of it.
 */
export function plainTopic(topic: string): string {
  return topic
    .replace(/^(?!.* against )(.+) being (?:the )?(original|actual)(?: one)?$/, "$2 $1")
    .replace(/ its being original$/, " its originality");
}

/** A conflict whose topic and sentence are worded as people say them; its key stays. */
export function plainConflict<One extends Pick<Conflict, "topic" | "why">>(conflict: One): One {
  const topic = plainTopic(conflict.topic);
  if (topic === conflict.topic) return conflict;
  const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);
  return {
    ...conflict,
    topic,
    why: conflict.why.replaceAll(conflict.topic, topic).replaceAll(capital(conflict.topic), capital(topic)),
  };
}
