import { type ReactNode, useEffect, useRef } from "react";
import { home, type Screen } from "../screen";
import { words } from "../words";

/** One screen of the pane: what it is about, the way back, and its content. */
export function Page(props: {
  readonly title: string;
  readonly text: string;
  /** Absent on the home screen, from which there is no way back. */
  readonly go?: (screen: Screen) => void;
  readonly children: ReactNode;
}) {
  const { title, text, go, children } = props;
  const heading = useRef<HTMLHeadingElement>(null);
  const cameHere = go !== undefined;
  // Who pressed their way here with the keyboard goes on from the heading, not from nowhere.
  useEffect(() => {
    if (cameHere) heading.current?.focus();
  }, [cameHere]);
  return (
    <>
      <header className="masthead">
        {go && (
          <button type="button" className="link" onClick={() => go(home)}>
            {words.home.back}
          </button>
        )}
        <h1 ref={heading} tabIndex={-1}>
          {title}
        </h1>
        <p>{text}</p>
      </header>
      <main aria-label={words.paneLabel}>{children}</main>
    </>
  );
}
