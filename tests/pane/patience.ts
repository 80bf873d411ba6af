import { configure } from "@testing-library/react";

/** How long a screen is waited for, in milliseconds: a slow machine is no fault of the pane. */
configure({ asyncUtilTimeout: 20_000 });
