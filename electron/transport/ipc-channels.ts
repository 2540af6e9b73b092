/** Names of the messages between the page's preload and the main process. */
export const ipcChannels = { call: "roundwalk:call", offerFile: "roundwalk:offer-file", event: "roundwalk:event" } as const;
