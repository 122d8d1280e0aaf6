/** Case files, units, catalogue of metals and mould media. */
module lastinch.cases {
  requires transitive lastinch.solver;
  requires java.xml;
  requires org.snakeyaml.engine;

  exports lastinch.cases.catalogue;
  exports lastinch.cases.format;
  exports lastinch.cases.mesh;
  exports lastinch.cases.plan;
  exports lastinch.cases.schema;
  exports lastinch.cases.units;
}
