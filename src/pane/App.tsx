import { lazy, Suspense, useState } from "react";
import { ErrorEdge } from "./parts/ErrorEdge";
import { TakeBackBar } from "./parts/TakeBackBar";
import { home, type Screen } from "./screen";
import { Home } from "./screens/Home";
import { words } from "./words";
import { WorkbookProvider } from "./workbook";

/* Only the home screen is there from the start; each of the others is fetched when it is first asked for. */
const QuestionScreen = lazy(() => import("./screens/QuestionScreen"));
const SetUpScreen = lazy(() => import("./screens/SetUpScreen"));
const TestDayScreen = lazy(() => import("./screens/TestDayScreen"));
const KeepScreen = lazy(() => import("./screens/KeepScreen"));
const PrioritiesScreen = lazy(() => import("./screens/PrioritiesScreen"));
const PlanScreen = lazy(() => import("./screens/PlanScreen"));
const DeliverScreen = lazy(() => import("./screens/DeliverScreen"));
const LoadScreen = lazy(() => import("./screens/LoadScreen"));
const OutcomeScreen = lazy(() => import("./screens/OutcomeScreen"));
const PagesScreen = lazy(() => import("./screens/PagesScreen"));
const TryGuide = lazy(() => import("./screens/TryGuide"));
const RemoveAthleteScreen = lazy(() => import("./screens/RemoveAthleteScreen"));
const FunctionsPage = lazy(() => import("./screens/FunctionsPage"));

export function App() {
  const [screen, go] = useState<Screen>(home);
  return (
    <ErrorEdge>
      <WorkbookProvider>
        <TakeBackBar />
        <Suspense fallback={null}>
          <TryGuide screen={screen} go={go} />
        </Suspense>
        <Suspense fallback={<Waiting />}>
          <Shown screen={screen} go={go} />
        </Suspense>
      </WorkbookProvider>
    </ErrorEdge>
  );
}

function Shown({ screen, go }: { readonly screen: Screen; readonly go: (screen: Screen) => void }) {
  switch (screen.kind) {
    case "home":
      return <Home go={go} />;
    case "question":
      return <QuestionScreen key={screen.id} id={screen.id} go={go} />;
    case "setUp":
      return <SetUpScreen go={go} />;
    case "testDay":
      return <TestDayScreen wished={screen.wished} go={go} />;
    case "keep":
      return <KeepScreen go={go} />;
    case "priorities":
      return <PrioritiesScreen go={go} />;
    case "plan":
      return <PlanScreen go={go} />;
    case "deliver":
      return <DeliverScreen go={go} />;
    case "load":
      return <LoadScreen go={go} />;
    case "outcome":
      return <OutcomeScreen go={go} />;
    case "pages":
      return <PagesScreen go={go} />;
    case "removeAthlete":
      return <RemoveAthleteScreen go={go} />;
    case "functions":
      return <FunctionsPage wished={screen.wished} go={go} />;
  }
}

const Waiting = () => (
  <main aria-label={words.paneLabel}>
    <p className="quiet" role="status">
      {words.loading}
    </p>
  </main>
);
