/** Physics and numerics: flow and freezing of metal in thin cavities. SI units and kelvin only. */
@SuppressWarnings("module") // validation is built after this module
module lastinch.solver {
  requires ejml.core;
  requires ejml.ddense;
  requires commons.math3;

  exports lastinch.solver.casting;
  exports lastinch.solver.decide;
  exports lastinch.solver.material;
  exports lastinch.solver.result;
  exports lastinch.solver.run;
  exports lastinch.solver.shape;
  exports lastinch.solver.shop;
  exports lastinch.solver.physics to
      lastinch.validation;
  exports lastinch.solver.wall to
      lastinch.validation;
}
