import { Component, type ReactNode } from "react";
import { words } from "../words";
import { Message } from "./Message";

/** The one place where a mistake of ours ends up: the coach reads what happened and that nothing was written. */
export class ErrorEdge extends Component<{ readonly children: ReactNode }, { readonly failed: boolean }> {
  override state = { failed: false };

  static getDerivedStateFromError = () => ({ failed: true });

  override render() {
    if (!this.state.failed) return this.props.children;
    return (
      <Message tone="trouble" title={words.ourMistake.title}>
        {words.ourMistake.text}
        <button type="button" className="button" onClick={() => window.location.reload()}>
          {words.ourMistake.reload}
        </button>
      </Message>
    );
  }
}
