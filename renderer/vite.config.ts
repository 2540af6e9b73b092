import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

export default defineConfig({
  root: fileURLToPath(new URL(".", import.meta.url)),
  // Relative, so that the page works under app:// and under http://127.0.0.1 alike.
  base: "./",
  plugins: [react()],
  build: {
    outDir: fileURLToPath(new URL("../.build/page", import.meta.url)),
    emptyOutDir: true,
    target: "es2024",
    // Nothing as data: URLs, so that the content security policy can name 'self' and no more.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 1200,
  },
});
