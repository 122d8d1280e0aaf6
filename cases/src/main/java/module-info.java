/** Case files, units, catalogue of metals and mould media. */
module lastinch.cases {
  requires transitive lastinch.solver;
  requires tools.jackson.dataformat.yaml;
}
