// The build, in two halves so that neither is rebuilt with the other:
// "add-in" is what a coach loads into Excel, "host" is the page that stands in for Excel.
require("./sample-workbooks/typescript.cjs"); // the loader of the custom functions is TypeScript

const { join } = require("node:path");
const { gzipSync } = require("node:zlib");
const CopyPlugin = require("copy-webpack-plugin");
const HtmlPlugin = require("html-webpack-plugin");
const CssPlugin = require("mini-css-extract-plugin");
const MinifyPlugin = require("terser-webpack-plugin");
const { IgnorePlugin, NormalModuleReplacementPlugin } = require("webpack");

const inRoot = (...parts) => join(__dirname, ...parts);

/** Where the manifest says the add-in lives. Set TAPELINE_URL when building for a server of your own. */
const developmentUrl = "https://localhost:3000";
const publicUrl = (process.env.TAPELINE_URL ?? developmentUrl).replace(/\/+$/, "");

/** What a coach waits for, in kB after gzip: the entries that have to be there, and how much they may weigh. */
const budgets = [
  { what: "before the first custom function answers", entries: ["functions"], limit: 45 },
  { what: "before the pane's first screen", entries: ["functions", "pane"], chunks: ["app"], limit: 200 },
];

/** Excel's own script comes from Microsoft's servers and nowhere else; everything else is ours. */
const contentSecurityPolicy = (...scriptOrigins) =>
  [
    "default-src 'self'",
    ["script-src 'self'", ...scriptOrigins].join(" "),
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    ["connect-src 'self'", ...scriptOrigins].join(" "),
    "object-src 'none'",
    "base-uri 'none'",
  ].join("; ");

/** What of dist/ the host's half makes; each half sweeps out its own leavings and keeps the other's. */
const hostFiles = /^(host[.-]|bridge\.js|index\.html|sample-workbooks)/;

const shared = (name) => ({
  name,
  mode: "production",
  context: __dirname,
  target: ["web", "es2022"],
  output: {
    path: inRoot("dist"),
    filename: "[name].js",
    uniqueName: `tapeline-${name}`,
    clean: { keep: (file) => hostFiles.test(file) !== (name === "host") },
  },
  resolve: { extensions: [".tsx", ".ts", ".mjs", ".js"] },
  module: {
    rules: [
      {
        test: /\.tsx?$/,
        exclude: /node_modules/,
        loader: "swc-loader",
        options: {
          jsc: {
            parser: { syntax: "typescript", tsx: true },
            transform: { react: { runtime: "automatic" } },
            target: "es2022",
          },
        },
      },
      // Pure by the law of the house, so what nobody calls may go, and the numerics behind it.
      { include: ["language", "engine", "reading", "analyses"].map((room) => inRoot("src", room)), sideEffects: false },
      { test: /\.css$/, use: [CssPlugin.loader, "css-loader"] },
      { test: /\.(svg|png|woff2?)$/, type: "asset/resource" },
    ],
  },
  optimization: { chunkIds: "deterministic", minimizer: [new MinifyPlugin({ minify: MinifyPlugin.swcMinify })] },
  performance: false,
  stats: "errors-warnings",
  cache: {
    type: "filesystem",
    name,
    cacheDirectory: inRoot(".cache", "webpack"),
    buildDependencies: { config: [__filename], loader: [inRoot("src", "functions", "metadata/")] },
  },
});

const addIn = {
  ...shared("add-in"),
  entry: {
    functions: "./src/functions/index.ts",
    pane: { import: "./src/pane/main.tsx", dependOn: "functions" },
  },
  devtool: "source-map",
  plugins: [
    new CssPlugin({ chunkFilename: "pane-[contenthash:8].css" }),
    panePage("taskpane.html", {
      officeScript: "https://appsforoffice.microsoft.com/lib/1/hosted/office.js",
      contentSecurityPolicy: contentSecurityPolicy("https://appsforoffice.microsoft.com", "https://ajax.aspnetcdn.com"),
    }),
    panePage("taskpane-embedded.html", {
      officeScript: "bridge.js",
      contentSecurityPolicy: contentSecurityPolicy(),
    }),
    new CopyPlugin({
      patterns: [
        {
          from: "manifest/manifest.xml",
          transform: (xml) => xml.toString().replaceAll(developmentUrl, publicUrl),
        },
        { from: "manifest/icons/*.png", to: "icons/[name][ext]" },
      ],
    }),
    // What the numerics carry for developers of their own: traces, and texts of errors that cannot happen here.
    ...Object.entries({
      debug: "module.exports = () => () => {};",
      "@stdlib/string-format": "module.exports = (text) => text;",
      "@stdlib/utils-define-nonenumerable-read-only-property": "module.exports = (of, name, it) => { of[name] = it; };",
    }).map(
      ([name, code]) =>
        new NormalModuleReplacementPlugin(
          new RegExp(`^${name}$`),
          `data:application/node;base64,${Buffer.from(code).toString("base64")}`,
        ),
    ),
    { apply: weighBundles },
  ],
};
addIn.output.chunkFilename = "pane-[contenthash:8].js";
addIn.module.rules.unshift({
  include: inRoot("src", "functions", "index.ts"),
  enforce: "pre",
  loader: inRoot("src", "functions", "metadata", "loader.ts"),
});
addIn.module.rules.unshift({
  include: inRoot("src", "functions", "reference.ts"),
  enforce: "pre",
  loader: inRoot("src", "functions", "metadata", "referenceLoader.ts"),
});

const host = {
  ...shared("host"),
  entry: { host: "./src/host/page/main.ts", bridge: "./src/host/page/bridge.ts" },
  optimization: { chunkIds: "deterministic", minimize: false }, // served to this machine alone; minifying triples the build
  plugins: [
    new CssPlugin({ chunkFilename: "host-[contenthash:8].css" }),
    new HtmlPlugin({
      template: "src/host/page/host.html",
      filename: "index.html",
      chunks: ["host"],
      hash: true,
    }),
    new CopyPlugin({ patterns: [{ from: "sample-workbooks/*.xlsx" }] }),
    // The grid can hyphenate some eighty languages, each a chunk of its own; the page is English.
    new IgnorePlugin({
      resourceRegExp: /^\.\/(?!en-)[a-z]{2,3}(-[a-z0-9]+)*-[\w-]{8}\.js$/,
      contextRegExp: /@univerjs.engine-render/,
    }),
  ],
};
host.output.chunkFilename = "host-[contenthash:8].js";

/** The pane's page. Excel and the embedded host get the same bundles; only the office script differs. */
function panePage(filename, templateParameters) {
  return new HtmlPlugin({
    template: "src/pane/taskpane.html",
    filename,
    templateParameters,
    chunks: ["functions", "pane"],
    chunksSortMode: "manual",
    hash: true,
  });
}

/** The files of a chunk that is fetched when wanted; that there are none would hide what it weighs. */
function filesOf(chunks) {
  if (!chunks) throw new Error("A chunk that the budget counts is no longer made.");
  return chunks.getFiles();
}

/** Fails the build when what a coach waits for has outgrown its budget. */
function weighBundles(compiler) {
  const name = "weigh bundles";
  compiler.hooks.thisCompilation.tap(name, (compilation) => {
    const stage = compiler.webpack.Compilation.PROCESS_ASSETS_STAGE_REPORT;
    compilation.hooks.processAssets.tap({ name, stage }, (assets) => {
      for (const { what, entries, chunks = [], limit } of budgets) {
        const files = [
          ...entries.flatMap((entry) => compilation.entrypoints.get(entry)?.getFiles() ?? []),
          ...chunks.flatMap((chunk) => filesOf(compilation.namedChunkGroups.get(chunk))),
        ];
        const weigh = (file) => gzipSync(assets[file].buffer()).length;
        const kilobytes = [...new Set(files)].reduce((sum, file) => sum + weigh(file), 0) / 1000;
        const words = `${kilobytes.toFixed(1)} kB (gzip) ${what}; the budget is ${limit} kB.`;
        compiler.getInfrastructureLogger(name).info(words);
        if (kilobytes > limit) compilation.errors.push(new compiler.webpack.WebpackError(words));
      }
    });
  });
}

module.exports = [addIn, host];
