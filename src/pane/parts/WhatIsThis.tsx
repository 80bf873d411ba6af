import * as Popover from "@radix-ui/react-popover";
import type { ReactNode } from "react";
import { words } from "../words";

/** A small question mark beside a term or number; pressed, it says what is meant. */
export function WhatIsThis(props: { readonly about: string; readonly children: ReactNode }) {
  return (
    <Popover.Root>
      <Popover.Trigger className="what" aria-label={words.whatIs(props.about)}>
        ?
      </Popover.Trigger>
      <Popover.Portal>
        <Popover.Content
          className="what-text"
          aria-label={words.whatIs(props.about)}
          sideOffset={4}
          collisionPadding={12}
        >
          {props.children}
        </Popover.Content>
      </Popover.Portal>
    </Popover.Root>
  );
}
