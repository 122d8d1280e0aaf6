/** Published comparisons and benchmarks. */
module lastinch.validation {
  requires lastinch.cases;
}
