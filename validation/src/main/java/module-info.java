/** Published comparisons and benchmarks. */
module lastinch.validation {
  requires lastinch.cases;
  requires commons.math3;
  requires jmh.core;
}
