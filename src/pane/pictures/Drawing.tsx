import { type ReactNode, useId } from "react";

/** What is drawn of a picture, with its title and all that it shows in words for whoever cannot see it. */
export function Drawing(props: {
  readonly title: string;
  readonly told: readonly string[];
  readonly width: number;
  readonly height: number;
  readonly children: ReactNode;
}) {
  const { title, told, width, height, children } = props;
  const id = useId();
  return (
    <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-labelledby={`${id}-title ${id}-text`}>
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-text`}>{told.join("; ")}</desc>
      {children}
    </svg>
  );
}
