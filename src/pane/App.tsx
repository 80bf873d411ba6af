import { analyses } from "../analyses";
import { ErrorEdge } from "./parts/ErrorEdge";
import { AnalysisScreen } from "./screens/AnalysisScreen";
import { words } from "./words";

export function App() {
  const analysis = analyses[0]!;
  return (
    <ErrorEdge>
      <header className="masthead">
        <h1>{analysis.title}</h1>
        <p>{analysis.question}</p>
      </header>
      <main aria-label={words.paneLabel}>
        <AnalysisScreen analysis={analysis} />
      </main>
    </ErrorEdge>
  );
}
