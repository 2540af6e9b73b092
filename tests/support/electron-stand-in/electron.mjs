// The parts of Electron that the main process uses, as its documentation describes them (https://www.electronjs.org/docs/latest/api).
// It shows no window: when the page would be loaded, it runs the questions named in ROUNDWALK_STAND_IN and prints the answers as JSON.
import { EventEmitter } from "node:events";

const handlers = new Map();
const ipcHandlers = new Map();
let schemes = null;
let ready = false;
let quitting = false;

class App extends EventEmitter {
  whenReady() {
    return new Promise((resolve) => {
      setImmediate(() => {
        ready = true;
        resolve();
      });
    });
  }
  requestSingleInstanceLock() {
    return true;
  }
  setName(name) {
    this.name = name;
  }
  /** As documented: "before-quit", then "will-quit"; the latter's preventDefault keeps the application from ending. */
  quit() {
    let prevented = false;
    this.emit("will-quit", {
      preventDefault: () => {
        prevented = true;
      },
    });
    if (!prevented && !quitting) {
      quitting = true;
      console.log(JSON.stringify({ ended: true }));
      process.exit(0);
    }
  }
  exit(code) {
    process.exit(code);
  }
}
export const app = new App();

export const protocol = {
  registerSchemesAsPrivileged(list) {
    if (ready) throw new Error("protocol.registerSchemesAsPrivileged should be called before app is ready");
    if (schemes) throw new Error("registerSchemesAsPrivileged may be called once");
    schemes = list;
  },
  handle(scheme, handler) {
    if (!ready) throw new Error("protocol.handle needs a ready app");
    handlers.set(scheme, handler);
  },
};

export const ipcMain = {
  handle: (channel, listener) => ipcHandlers.set(channel, listener),
  removeHandler: (channel) => ipcHandlers.delete(channel),
};

const permissionHandlers = {};
class Session extends EventEmitter {
  setPermissionRequestHandler(handler) {
    permissionHandlers.request = handler;
  }
  setPermissionCheckHandler(handler) {
    permissionHandlers.check = handler;
  }
}
export const session = { defaultSession: new Session() };
export const shell = { openPath: async () => "" };
export const dialog = {
  showErrorBox: (title, text) => console.log(JSON.stringify({ errorBox: [title, text] })),
};
export const Menu = { setApplicationMenu: () => {}, buildFromTemplate: (template) => template };

class WebContents extends EventEmitter {
  sent = [];
  getURL() {
    return "app://roundwalk/";
  }
  setWindowOpenHandler(handler) {
    this.openHandler = handler;
  }
  send(...values) {
    this.sent.push(structuredClone(values));
  }
  isDestroyed() {
    return false;
  }
}

const windows = [];
export class BrowserWindow extends EventEmitter {
  webContents = new WebContents();
  constructor(options) {
    super();
    this.options = options;
    windows.push(this);
    app.emit("web-contents-created", {}, this.webContents);
  }
  static getAllWindows() {
    return windows;
  }
  show() {}
  focus() {}
  isMinimized() {
    return false;
  }
  async loadURL(url) {
    const page = await handlers.get("app")(new Request(url));
    this.emit("ready-to-show");
    setTimeout(() => this.ask(page), 0);
  }
  async ask(page) {
    const event = { senderFrame: { origin: "app://roundwalk", parent: null } };
    const navigation = (url) => {
      let prevented = false;
      this.webContents.emit("will-navigate", { url, preventDefault: () => (prevented = true) });
      return prevented ? "stopped" : "allowed";
    };
    const permission = (name) => new Promise((resolve) => permissionHandlers.request(this.webContents, name, resolve));
    const answers = {
      schemes,
      webPreferences: this.options.webPreferences,
      page: { status: page.status, policy: page.headers.get("content-security-policy") },
      otherHost: (await handlers.get("app")(new Request("app://other/"))).status,
      abilities: await ipcHandlers.get("roundwalk:call")(event, "host.abilities", {}),
      foreign: await ipcHandlers.get("roundwalk:call")({ senderFrame: null }, "host.abilities", {}),
      navigation: {
        own: navigation("app://roundwalk/#/x"),
        other: navigation("https://other.example/"),
        file: navigation("file:///etc/passwd"),
      },
      popup: this.webContents.openHandler({ url: "https://other.example/" }),
      permissions: { camera: await permission("media"), fullscreen: await permission("fullscreen") },
    };
    const offered = await ipcHandlers.get("roundwalk:offer-file")(event, process.env.ROUNDWALK_STAND_IN_TRANSCRIPT);
    answers.imported = await ipcHandlers.get("roundwalk:call")(event, "recording.import", {
      transcript: offered.value.id,
      video: null,
      stockSheet: null,
      title: "Stand-in",
      stockNumber: "S-1",
      vehicle: { name: "Fallow Kestrel", year: 1971, bodyStyle: "coupe", drive: "left-hand" },
    });
    answers.media = (await handlers.get("app")(new Request(`app://roundwalk/media/${answers.imported.value?.id}`))).status;
    answers.events = [...new Set(this.webContents.sent.map(([channel, name]) => `${channel} ${name}`))];
    console.log(JSON.stringify(answers));
    app.emit("window-all-closed");
  }
}

// The preload's side is built apart and never asked for here.
export const contextBridge = {};
export const ipcRenderer = {};
export const webUtils = {};
