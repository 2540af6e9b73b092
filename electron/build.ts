import { parseArgs } from "node:util";
import { buildDesktop, buildPage } from "./launch/build-parts.ts";

const { values } = parseArgs({ options: { page: { type: "boolean" }, desktop: { type: "boolean" } } });
const both = !values.page && !values.desktop;
if (both || values.page) await buildPage();
if (both || values.desktop) await buildDesktop();
