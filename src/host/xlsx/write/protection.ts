import { type Password, passwordHash } from "../../engine/passwords";
import type { Lock } from "../../engine/protection";
import { allowedUnlessForbidden, protectionAttributes } from "../protections";
import { tag } from "./markup";

export function sheetProtectionMarkup(lock: Lock | null): string {
  if (!lock) return "";
  const { options, password } = lock;
  const forbidden = Object.entries(protectionAttributes).flatMap(([attribute, option]) => {
    const isForbidden = options[option] !== true;
    return isForbidden === !allowedUnlessForbidden.includes(attribute) ? [] : [[attribute, isForbidden ? 1 : 0]];
  });
  return tag("sheetProtection", {
    ...passwordAttributes(password),
    sheet: true,
    ...Object.fromEntries(forbidden),
    selectLockedCells: options.selectionMode === "Unlocked" || options.selectionMode === "None",
    selectUnlockedCells: options.selectionMode === "None",
  });
}

export function structureProtectionMarkup(password: Password | null): string {
  if (password === null) return "";
  const attributes = Object.entries(passwordAttributes(password)).map(([name, value]) => [
    `workbook${name.charAt(0).toUpperCase()}${name.slice(1)}`,
    value,
  ]);
  return tag("workbookProtection", { ...Object.fromEntries(attributes), lockStructure: true });
}

function passwordAttributes(password: Password): Readonly<Record<string, string>> {
  if (typeof password !== "string") return password.attributes;
  return password === "" ? {} : { password: passwordHash(password) };
}
