/** Published comparisons and benchmarks. */
module lastinch.validation {
  requires lastinch.cases;
  requires java.desktop;
  requires commons.math3;
  requires jmh.core;
  requires org.jfree.jfreechart;
}
