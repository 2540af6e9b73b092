/**
 * Every English text of the desktop's shell: menus, the system's windows, what is said when something went wrong. Another language is
 * another table of this form. `{name}` stands for what is put in.
 */
export const shellTexts = {
  menu: {
    file: "File",
    importFiles: "Import files…",
    recent: "Recent recordings",
    noRecent: "None yet",
    print: "Print the condition index…",
    savePdf: "Save the condition index as PDF…",
    showLibrary: "Show the library in its folder",
    moveLibrary: "Move the library…",
    otherLibrary: "Use another library…",
    close: "Close the window",
    quit: "Quit Roundwalk",
    edit: "Edit",
    cut: "Cut",
    copy: "Copy",
    paste: "Paste",
    pastePlain: "Paste without style",
    remove: "Delete",
    selectAll: "Select all",
    view: "View",
    reload: "Load the page again",
    actualSize: "Actual size",
    larger: "Larger",
    smaller: "Smaller",
    fullScreen: "Full screen",
    window: "Window",
    minimize: "Minimize",
    zoom: "Zoom",
    help: "Help",
    openHelp: "Help with Roundwalk",
    copyDiagnostics: "Copy diagnostics",
    showLog: "Show the log in its folder",
    about: "About Roundwalk",
  },
  kinds: {
    walkFiles: "Transcripts, videos and stock sheets",
    allFiles: "All files",
    pdf: "PDF",
  },
  choose: {
    importFiles: "Choose transcripts, videos and stock sheets",
    folder: "Choose a folder",
    moveLibrary: "Choose the folder that the library is to move into",
    otherLibrary: "Choose the folder of the other library, or an empty one for a new library",
    savePdf: "Save the condition index",
    saveFile: "Save the file",
    here: "Use this folder",
  },
  cannotStart: { title: "Roundwalk cannot start" },
  failed: {
    title: "Roundwalk has to end",
    text: "Something went wrong that Roundwalk did not foresee. All edits up to now are on disk. Start it again; the log says what happened.",
  },
  libraryAway: {
    message: "The library is not where it was",
    detail: "{file} is not there. If it is on a disk that can be taken off, connect the disk first.",
    again: "Look again",
    usual: "Use the library at the usual place",
    quit: "Quit",
  },
  moveLibrary: {
    message: "Move the library into {folder}?",
    detail:
      "Recordings, edits, exports and the videos that Roundwalk keeps move; videos that stay in folders of your own stay there. Roundwalk starts again afterwards. The old place is cleared only when everything has arrived.",
    yes: "Move the library",
    no: "Leave it where it is",
    failedTitle: "The library was not moved",
    failedText: "{reason}\n\nEverything is where it was.",
    left: "The library is at its new place. These could not be removed from the old one: {files}",
  },
  gone: {
    message: "The page has stopped",
    detail: "All edits up to now are on disk. Only what was being typed and not yet saved is lost.\n\n({reason})",
    again: "Open the page again",
    quit: "Quit",
  },
  hangs: {
    message: "The page does not answer",
    detail: "It may be busy. All edits up to now are on disk. Only what was being typed and not yet saved is lost when it is opened again.",
    wait: "Wait",
    again: "Open the page again",
  },
  outside: {
    message: "Open this address in your browser?",
    detail: "{address}\n\nIt is no part of Roundwalk, and others may see that you open it.",
    yes: "Open it",
    no: "Stay here",
  },
  link: {
    invalidTitle: "Roundwalk cannot follow this link",
    invalid: "A link looks like roundwalk://recording/ID?t=SECONDS. This one does not, so nothing was done.",
    unknown: "The link's recording is not in this library. It may have been removed, or the link is of another library.",
  },
  files: { title: "Not all files were taken" },
  print: {
    none: "Open a recording first: what is printed is the condition index of the recording that is shown.",
    title: "The condition index was not made",
    failed: "{reason}",
    pageEnded: "The page that was to be printed stopped ({reason}). Try it once more.",
    printer: "The printer says: {reason}",
  },
  diagnostics: {
    message: "The diagnostics are on the clipboard",
    detail: "Versions, counts and codes; no names, paths or words of yours.",
  },
  ok: "OK",
} as const;

type Words<Table> = { readonly [Key in keyof Table]: Table[Key] extends string ? string : Words<Table[Key]> };

/** The form of a table in any language. */
export type ShellTexts = Words<typeof shellTexts>;

/** A text with what belongs into its gaps; a gap that nothing is given for stays to be seen. */
export function filled(text: string, gaps: Readonly<Record<string, string>>): string {
  return text.replaceAll(/\{(\w+)\}/g, (gap, name: string) => gaps[name] ?? gap);
}
