/** How far long work is, and the press that stops it. */
export function Progress(props: {
  readonly done: number;
  readonly of: number;
  readonly words: string;
  readonly stop: { readonly label: string; readonly press: () => void };
}) {
  const { done, of, words, stop } = props;
  return (
    <p className="progress" role="status">
      <progress max={of} value={done} aria-label={words} />
      <span>{words}</span>
      <button type="button" className="link" onClick={stop.press}>
        {stop.label}
      </button>
    </p>
  );
}
