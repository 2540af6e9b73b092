export { findCorrections } from "./corrections.ts";
export { type FrameSubject, frameSubjects } from "./frame-rule.ts";
export { type Clause, type Frames, frameSpeech } from "./frame-speech.ts";
export { markSetAgainst } from "./set-against.ts";
export { stretchAround } from "./stretch-around.ts";
