/** Lets Node run our TypeScript as it is: `node --require ./sample-workbooks/typescript.cjs file.ts`. */
const { transformSync } = require("@swc/core");
const { readFileSync } = require("node:fs");

require.extensions[".ts"] = (module, filename) => {
  const { code } = transformSync(readFileSync(filename, "utf8"), {
    filename,
    configFile: false,
    swcrc: false,
    sourceMaps: "inline",
    jsc: { parser: { syntax: "typescript" }, target: "es2022" },
    module: { type: "commonjs" },
  });
  module._compile(code, filename);
};
