import { element } from "./elements";

export type Message = {
  readonly title: string;
  readonly text?: string;
  /** Things to list below the text. */
  readonly items?: readonly string[];
  /** Words on the button that goes on. */
  readonly goOn: string;
  /** Words on the button that does not; without them there is one button only. */
  readonly stay?: string;
};

/** Shows a message and waits for the answer: `true` for going on, `false` for staying (also by Escape). */
export function ask({ title, text, items = [], goOn, stay }: Message): Promise<boolean> {
  const dialog = element("message", HTMLDialogElement);
  element("message-title", HTMLHeadingElement).textContent = title;
  const body = element("message-text", HTMLDivElement);
  body.replaceChildren();
  if (text) body.append(paragraph(text));
  if (items.length > 0) body.append(list(items));
  const deeds = element("message-deeds", HTMLFormElement);
  deeds.replaceChildren();
  if (stay) deeds.append(button("stay", stay));
  deeds.append(button("go-on", goOn));
  dialog.returnValue = "";
  dialog.showModal();
  return new Promise((resolve) => {
    dialog.addEventListener("close", () => resolve(dialog.returnValue === "go-on"), { once: true });
  });
}

function paragraph(text: string): HTMLParagraphElement {
  const created = document.createElement("p");
  created.textContent = text;
  return created;
}

function list(items: readonly string[]): HTMLUListElement {
  const created = document.createElement("ul");
  for (const item of items) {
    const line = document.createElement("li");
    line.textContent = item;
    created.append(line);
  }
  return created;
}

function button(value: string, words: string): HTMLButtonElement {
  const created = document.createElement("button");
  created.className = "button";
  created.value = value;
  created.textContent = words;
  if (value === "go-on") {
    created.dataset.main = "";
    created.autofocus = true;
  }
  return created;
}
