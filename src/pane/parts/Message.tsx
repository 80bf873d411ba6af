import type { ReactNode } from "react";

/** What the pane has to say. Trouble is told at once to a screen reader, the rest in turn. */
export function Message(props: {
  readonly tone: "plain" | "good" | "trouble";
  readonly title: string;
  readonly children?: ReactNode;
}) {
  return (
    <section className="message" data-tone={props.tone} role={props.tone === "trouble" ? "alert" : "status"}>
      <h2>{props.title}</h2>
      <div className="message-text">{props.children}</div>
    </section>
  );
}
