/** Command line, charts and all sentences. */
module lastinch.ui {
  requires lastinch.cases;
  requires info.picocli;
  requires me.tongfei.progressbar;

  opens lastinch.ui.cli to
      info.picocli;
}
