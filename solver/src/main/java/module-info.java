/** Physics and numerics: flow and freezing of metal in thin cavities. SI units and kelvin only. */
@SuppressWarnings("module") // validation is built after this module
module lastinch.solver {
  requires ejml.core;
  requires ejml.ddense;
  requires commons.math3;

  exports lastinch.solver.casting;
  exports lastinch.solver.casting.gating;
  exports lastinch.solver.diagnosis;
  exports lastinch.solver.filling;
  exports lastinch.solver.geometry.cavity;
  exports lastinch.solver.geometry.gating;
  exports lastinch.solver.geometry.solid;
  exports lastinch.solver.levers;
  exports lastinch.solver.material;
  exports lastinch.solver.result;
  exports lastinch.solver.run;
  exports lastinch.solver.search;
  exports lastinch.solver.shop;
  exports lastinch.solver.study;
  exports lastinch.solver.uncertainty;
  exports lastinch.solver.physics to
      lastinch.validation;
  exports lastinch.solver.wall to
      lastinch.validation;
}
