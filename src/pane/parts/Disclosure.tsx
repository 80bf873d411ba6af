import * as Collapsible from "@radix-ui/react-collapsible";
import type { ReactNode } from "react";

/** Something that most coaches need not see: a line to press, and what is behind it. */
export function Disclosure(props: {
  readonly title: string;
  readonly open: boolean;
  readonly onOpenChange: (open: boolean) => void;
  readonly children: ReactNode;
}) {
  return (
    <Collapsible.Root className="disclosure" open={props.open} onOpenChange={props.onOpenChange}>
      <Collapsible.Trigger className="disclosure-title">
        <svg className="disclosure-mark" viewBox="0 0 10 10" aria-hidden="true">
          <path d="M3 1.5 7 5 3 8.5" />
        </svg>
        {props.title}
      </Collapsible.Trigger>
      <Collapsible.Content>{props.children}</Collapsible.Content>
    </Collapsible.Root>
  );
}
