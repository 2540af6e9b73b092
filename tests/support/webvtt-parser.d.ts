declare module "webvtt-parser" {
  interface Cue {
    readonly id: string;
    readonly startTime: number;
    readonly endTime: number;
    readonly text: string;
  }
  export class WebVTTParser {
    parse(
      text: string,
      mode?: "metadata" | "chapters" | "subtitles/captions/descriptions",
    ): { cues: Cue[]; errors: { message: string; line: number }[] };
  }
}
