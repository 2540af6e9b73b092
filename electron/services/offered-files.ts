import { randomUUID } from "node:crypto";
import { createWriteStream, existsSync, mkdirSync, readdirSync, rmdirSync, rmSync, statSync } from "node:fs";
import { rename, rm, statfs } from "node:fs/promises";
import { basename, extname, isAbsolute, join, resolve } from "node:path";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import type { OfferedFile } from "../../shared-types/index.ts";
import { isRunning } from "../library/library-lock.ts";
import { Refusal } from "./refusals.ts";

export interface KnownFile extends OfferedFile {
  readonly path: string;
  /** True for a copy that was received for the import and belongs to nobody else. */
  readonly received: boolean;
}

export interface OfferedFiles {
  /** A file on this machine, which stays where it is. */
  readonly offerPath: (path: string) => OfferedFile;
  /** A file that a browser sends. `bytes`: what the sender announced, if it did. */
  readonly receive: (name: string, content: ReadableStream<Uint8Array>, bytes: number | null) => Promise<OfferedFile>;
  /** The file behind an id. @throws Refusal when it was never offered or has been let go. */
  readonly find: (id: string) => KnownFile;
  /** Moves a received file to its place in the library; it is then no longer offered. */
  readonly keep: (id: string, place: string) => Promise<void>;
  readonly letGo: (ids: readonly string[]) => void;
  /** Removes everything that was received and not kept. */
  readonly close: () => void;
}

export interface ReceivingBounds {
  /** Most bytes of one file. */
  readonly fileBytes: number;
  /** Most files waiting at once; the longest waiting one gives way. */
  readonly files: number;
  /** Bytes that must stay free on the disk. */
  readonly spareBytes: number;
}

const gibibyte = 2 ** 30;
/** After so many bytes the free space is looked at again. */
const lookBytes = 64 * 2 ** 20;
const usualBounds: ReceivingBounds = { fileBytes: 32 * gibibyte, files: 12, spareBytes: gibibyte / 2 };

/** @param parent where received files wait, in a folder for each process; those of processes that have ended are removed. */
export function createOfferedFiles(parent: string, bounds: ReceivingBounds = usualBounds): OfferedFiles {
  const known = new Map<string, KnownFile>();
  const folder = join(parent, String(process.pid));
  removeLeftovers(parent);

  const letGo = (ids: readonly string[]) => {
    for (const id of ids) {
      const file = known.get(id);
      known.delete(id);
      if (file?.received) rmSync(file.path, { force: true });
    }
  };
  const makeRoom = () => {
    const received = [...known.values()].filter((file) => file.received);
    letGo(received.slice(0, Math.max(0, received.length - bounds.files + 1)).map(({ id }) => id));
  };

  return {
    offerPath(path) {
      const place = isAbsolute(path) ? path : resolve(path);
      const found = statSync(place, { throwIfNoEntry: false });
      if (!found) throw new Refusal("file-missing", `${place}: there is no such file. Check the name.`, { file: place });
      if (!found.isFile()) throw new Refusal("file-no-file", `${place} is a folder or a device, not a file. Name a file.`, { file: place });
      const offered = { id: randomUUID(), name: basename(place), bytes: found.size };
      known.set(offered.id, { ...offered, path: place, received: false });
      return offered;
    },
    async receive(name, content, bytes) {
      const plainName =
        basename(name.replaceAll("\\", "/"))
          .replaceAll(/\p{Cc}/gu, "")
          .slice(0, 200) || "file";
      const tooBig = () =>
        new Refusal("file-too-big", `${plainName} is larger than ${bounds.fileBytes} bytes, the most that is taken. Cut it into parts.`, {
          file: plainName,
        });
      if (bytes !== null && bytes > bounds.fileBytes) throw tooBig();
      mkdirSync(folder, { recursive: true });
      const freeBytes = async () => {
        const disk = await statfs(folder);
        return disk.bavail * disk.bsize - bounds.spareBytes;
      };
      const full = () =>
        new Refusal("disk-full", `There is no room for ${plainName} on the disk of ${folder}. Free some space and try again.`, {
          file: plainName,
        });
      if ((bytes ?? 0) > (await freeBytes())) throw full();
      makeRoom();
      const id = randomUUID();
      const place = join(folder, `${id}${extname(plainName).slice(0, 10)}`);
      let received = 0;
      let nextLook = 0;
      const writer = createWriteStream(place, { flags: "wx" });
      try {
        await pipeline(
          Readable.fromWeb(content as Parameters<typeof Readable.fromWeb>[0]),
          async function* counted(chunks: AsyncIterable<Buffer>) {
            for await (const chunk of chunks) {
              received += chunk.length;
              if (received > bounds.fileBytes) throw tooBig();
              // Others write to the disk too, so it is looked at again and again.
              if (received >= nextLook) {
                if ((await freeBytes()) < 0) throw full();
                nextLook = received + lookBytes;
              }
              yield chunk;
            }
          },
          writer,
        );
      } catch (failure) {
        // A refusal may come before the file was opened, and it would then appear after it was removed.
        if (!writer.closed) await new Promise<void>((closed) => writer.once("close", () => closed()));
        await rm(place, { force: true });
        throw failure;
      }
      const offered = { id, name: plainName, bytes: received };
      known.set(id, { ...offered, path: place, received: true });
      return offered;
    },
    find(id) {
      const file = known.get(id);
      if (!file) throw new Refusal("file-not-offered", "The chosen file is no longer at hand. Choose it again.");
      return file;
    },
    async keep(id, place) {
      const file = known.get(id);
      if (!file?.received) throw new Error(`${id} is no received file.`);
      await rename(file.path, place);
      known.delete(id);
    },
    letGo,
    close() {
      known.clear();
      rmSync(folder, { recursive: true, force: true });
      if (existsSync(parent) && readdirSync(parent).length === 0) rmdirSync(parent);
    },
  };
}

function removeLeftovers(parent: string): void {
  if (!existsSync(parent)) return;
  for (const name of readdirSync(parent)) {
    if (/^\d+$/.test(name) && (Number(name) === process.pid || !isRunning(Number(name))))
      rmSync(join(parent, name), { recursive: true, force: true });
  }
}
