import { contextBridge, ipcRenderer, webUtils } from "electron";
import { bridgeName } from "../shared-types/host-bridge.ts";
import { createBridge } from "./transport/preload-bridge.ts";

// The one bridge into the page; built to CommonJS, since a sandboxed preload knows nothing else.
contextBridge.exposeInMainWorld(
  bridgeName,
  createBridge<File>(ipcRenderer, (file) => webUtils.getPathForFile(file)),
);
