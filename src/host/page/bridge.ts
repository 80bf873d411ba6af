/**
 * Runs in the task pane's frame before the task pane itself: there is no Excel around it here, so the page's own host
 * takes Excel's place. The task pane cannot tell, and need not.
 */
const host = window.parent.tapelineHost;
if (!host) throw new Error("The task pane was opened outside the page that holds its workbook.");
host.install(window);

export {};
