/** Command line, charts and all sentences. */
module lastinch.ui {
  requires lastinch.cases;
  requires info.picocli;
  requires java.desktop;
}
