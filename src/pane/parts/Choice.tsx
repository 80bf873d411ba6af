import { useId } from "react";
import { WhatIsThis } from "./WhatIsThis";

/** A labelled choice among few: the platform's own list, which every keyboard and screen reader knows. */
export function Choice<Value extends string>(props: {
  readonly label: string;
  readonly meaning?: string;
  readonly value: Value;
  readonly options: readonly (readonly [Value, string])[];
  readonly onChange: (value: Value) => void;
}) {
  const id = useId();
  return (
    <div className="field">
      <span className="field-label">
        <label htmlFor={id}>{props.label}</label>
        {props.meaning && <WhatIsThis about={props.label}>{props.meaning}</WhatIsThis>}
      </span>
      <select id={id} value={props.value} onChange={(event) => props.onChange(event.target.value as Value)}>
        {props.options.map(([value, text]) => (
          <option key={value} value={value}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
}
