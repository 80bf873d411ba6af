import { useState } from "react";
import { analyses } from "../analyses";
import { ErrorEdge } from "./parts/ErrorEdge";
import { AnalysisScreen } from "./screens/AnalysisScreen";
import { Home } from "./screens/Home";
import { words } from "./words";

export function App() {
  const [chosen, choose] = useState<string | null>(null);
  const analysis = analyses.find(({ id }) => id === chosen);
  return (
    <ErrorEdge>
      <header className="masthead">
        {analysis && (
          <button type="button" className="link" onClick={() => choose(null)}>
            {words.home.back}
          </button>
        )}
        <h1>{analysis?.title ?? words.home.title}</h1>
        <p>{analysis?.question ?? words.home.text}</p>
      </header>
      <main aria-label={words.paneLabel}>
        {analysis ? <AnalysisScreen key={analysis.id} analysis={analysis} /> : <Home choose={choose} />}
      </main>
    </ErrorEdge>
  );
}
