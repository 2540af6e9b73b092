export { findCorrections } from "./corrections.ts";
export { type FrameSubject, frameSubjects } from "./frame-rules.ts";
export { type Clause, type Frames, frameSpeech } from "./frame-speech.ts";
