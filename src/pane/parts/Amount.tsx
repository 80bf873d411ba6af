import { useId, useState } from "react";
import { numeral } from "../../language/say";
import { WhatIsThis } from "./WhatIsThis";

/** A labelled number with its unit. What cannot be a value is told beneath, and the last good value stays in force. */
export function Amount(props: {
  readonly label: string;
  readonly meaning: string;
  readonly unit: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly trouble: string;
  readonly onChange: (value: number) => void;
}) {
  const id = useId();
  const [typed, setTyped] = useState(numeral(props.value));
  const isGood = (text: string) => {
    const value = Number(text.replace(",", "."));
    return text.trim() !== "" && value >= props.low && value <= props.high;
  };
  const good = isGood(typed);
  return (
    <div className="field">
      <span className="field-label">
        <label htmlFor={id}>{props.label}</label>
        <WhatIsThis about={props.label}>{props.meaning}</WhatIsThis>
      </span>
      <span className="amount">
        <input
          id={id}
          inputMode="decimal"
          value={typed}
          aria-invalid={!good}
          aria-describedby={good ? undefined : `${id}-trouble`}
          onChange={(event) => {
            setTyped(event.target.value);
            if (isGood(event.target.value)) props.onChange(Number(event.target.value.replace(",", ".")));
          }}
        />
        <span>{props.unit}</span>
      </span>
      {!good && (
        <p className="field-trouble" id={`${id}-trouble`} role="alert">
          {props.trouble}
        </p>
      )}
    </div>
  );
}
