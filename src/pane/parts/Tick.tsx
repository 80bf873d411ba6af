import { type ReactNode, useId } from "react";

/** A labelled tick. */
export function Tick(props: {
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
  readonly children: ReactNode;
}) {
  const id = useId();
  return (
    <p className="tick">
      <input
        id={id}
        type="checkbox"
        checked={props.checked}
        onChange={(event) => props.onChange(event.target.checked)}
      />
      <label htmlFor={id}>{props.children}</label>
    </p>
  );
}
