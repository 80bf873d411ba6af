import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { BatchRefusal } from "./refusal";

/** Refuses a place where a file stands already, unless it may be replaced. Asked before the work and at its end. */
export function refuseStanding(path: string, replace: boolean): void {
  if (existsSync(path) && !replace) throw new BatchRefusal(`${path} is there already. Add --replace to replace it.`);
}

/** Writes a file wholly or not at all: under a name of its own first, then put in its place in one step. */
export function saveFile(path: string, bytes: Uint8Array): void {
  const unfinished = join(dirname(path), `.${basename(path)}.${process.pid}.unfinished`);
  try {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(unfinished, bytes);
    renameSync(unfinished, path);
  } catch (error) {
    if (existsSync(unfinished)) rmSync(unfinished);
    throw new BatchRefusal(whyUnwritten(path, error as NodeJS.ErrnoException));
  }
}

function whyUnwritten(path: string, { code, message }: NodeJS.ErrnoException): string {
  if (code === "EBUSY" || code === "EPERM" || code === "EACCES") {
    return `${path} could not be written: it is open in another program, or its folder is not yours to write to.`;
  }
  if (code === "ENOTDIR" || code === "EEXIST")
    return `${path} could not be written: a file stands where a folder is needed.`;
  if (code === "ENOSPC") return `${path} could not be written: the disk is full.`;
  return `${path} could not be written: ${message}`;
}
