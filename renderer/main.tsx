import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { z } from "zod";
import { App } from "./app.tsx";
import { chooseClient } from "./client/use-client.ts";
import { applyStoredGround } from "./shared/ground.ts";
import "@fontsource-variable/atkinson-hyperlegible-next/wght.css";
import "./shared/tokens.css";
import "./shared/base.css";
import "./shared/controls.css";

// Before the first parse: zod's compiler tries `new Function`, which the content security policy reports as a violation.
z.config({ jitless: true });
applyStoredGround();

// A file dropped beside the places for it must not replace the page.
for (const name of ["dragover", "drop"] as const) window.addEventListener(name, (event) => event.preventDefault());

const page = document.getElementById("page");
if (!page) throw new Error("index.html has no element #page.");
createRoot(page).render(
  <StrictMode>
    <App client={chooseClient()} />
  </StrictMode>,
);
