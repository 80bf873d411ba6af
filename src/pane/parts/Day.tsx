import { useId } from "react";

/** A labelled day, ISO; the program's own calendar shows it the way its user is used to. */
export function Day(props: {
  readonly label: string;
  readonly value: string;
  readonly onChange: (day: string) => void;
}) {
  const id = useId();
  return (
    <div className="field">
      <span className="field-label">
        <label htmlFor={id}>{props.label}</label>
      </span>
      <input
        id={id}
        type="date"
        value={props.value}
        onChange={(event) => event.target.value !== "" && props.onChange(event.target.value)}
      />
    </div>
  );
}
