import { spawn } from "node:child_process";
import { app } from "electron";
import { argumentsToStartAgain } from "./start-wishes.ts";

/** Ends the program at once and starts it again as it was started, without the files and links of that start. Everything must be on disk. */
export function startAgain(): void {
  const args = argumentsToStartAgain(process.argv, app.isPackaged);
  const image = app.isPackaged ? process.env.APPIMAGE : undefined;
  if (image) {
    // The program lies in a file system that goes with it, and Electron's own helper for this would go too.
    app.releaseSingleInstanceLock();
    spawn(image, args, { detached: true, stdio: "ignore" })
      .on("error", () => {})
      .unref();
  } else app.relaunch({ args });
  app.exit(0);
}
