export { findCorrections } from "./corrections.ts";
export { type FrameSubject, frameSubjects } from "./frame-rule.ts";
export { type Clause, type Frames, frameSpeech } from "./frame-speech.ts";
export { stretchAround } from "./stretch-around.ts";
