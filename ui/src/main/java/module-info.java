/** Command line, charts and all sentences. */
module lastinch.ui {
  requires lastinch.cases;
  requires info.picocli;
  requires java.desktop;
  requires java.xml;
  requires me.tongfei.progressbar;
  requires org.apache.xmlgraphics.batik.svggen;
  requires org.jfree.jfreechart;

  opens lastinch.ui.cli to
      info.picocli;
  opens lastinch.ui.cli.draft to
      info.picocli;
  opens lastinch.ui.cli.study to
      info.picocli;
}
