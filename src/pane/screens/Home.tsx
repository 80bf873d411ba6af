import { analyses } from "../../analyses";

/** The questions a coach can ask, in the order in which they usually come up. */
export function Home({ choose }: { readonly choose: (id: string) => void }) {
  return (
    <ul className="questions">
      {analyses.map(({ id, title, question }) => (
        <li key={id}>
          <button type="button" className="question" onClick={() => choose(id)}>
            <span className="question-title">{title}</span>
            <span>{question}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}
