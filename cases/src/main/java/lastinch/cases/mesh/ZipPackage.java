package lastinch.cases.mesh;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The packed file round a 3MF model. Refuses what unpacks to more than a model could need. */
final class ZipPackage {
  private static final long MOST_UNPACKED = 200L << 20;
  private static final long SUSPICIOUS = 20L << 20;
  private static final int MOST_RATIO = 100;
  private static final int MOST_ENTRIES = 2000;
  private static final String MODEL_TYPE = "/3dmodel";

  /** What is done with the XML of an entry. */
  interface Use<T> {
    T apply(XMLStreamReader xml) throws XMLStreamException, MeshError;
  }

  private ZipPackage() {}

  static <T> T read(Path path, Use<T> use) throws IOException, MeshError {
    try (ZipFile zip = new ZipFile(path.toFile())) {
      if (zip.size() > MOST_ENTRIES) {
        throw new MeshError("wrong.3mfFileHoldsMore");
      }
      return xml(zip, modelEntry(zip), use);
    } catch (ZipException e) {
      throw new MeshError("wrong.3mfFileDamagedSave");
    }
  }

  private static ZipEntry modelEntry(ZipFile zip) throws IOException, MeshError {
    ZipEntry links = zip.getEntry("_rels/.rels");
    Optional<String> target =
        links == null ? Optional.empty() : xml(zip, links, ZipPackage::modelTarget);
    if (target.isPresent()) {
      String name = target.get();
      ZipEntry named = zip.getEntry(name.startsWith("/") ? name.substring(1) : name);
      if (named != null) {
        return named;
      }
    }
    Enumeration<? extends ZipEntry> all = zip.entries();
    while (all.hasMoreElements()) {
      ZipEntry entry = all.nextElement();
      if (entry.getName().toLowerCase(Locale.ROOT).endsWith(".model")) {
        return entry;
      }
    }
    throw new MeshError("wrong.noModel3mfFile");
  }

  private static Optional<String> modelTarget(XMLStreamReader xml) throws XMLStreamException {
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT
          && xml.getLocalName().equals("Relationship")) {
        String type = xml.getAttributeValue(null, "Type");
        String target = xml.getAttributeValue(null, "Target");
        if (type != null && target != null && type.endsWith(MODEL_TYPE)) {
          return Optional.of(target);
        }
      }
    }
    return Optional.empty();
  }

  private static <T> T xml(ZipFile zip, ZipEntry entry, Use<T> use) throws IOException, MeshError {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
    try (InputStream in = new Counted(zip.getInputStream(entry), entry.getCompressedSize())) {
      XMLStreamReader xml = new Guarded(factory.createXMLStreamReader(text(in)));
      return use.apply(xml);
    } catch (XMLStreamException e) {
      if (e.getCause() instanceof Bomb || e.getNestedException() instanceof Bomb) {
        throw bomb();
      }
      if (e instanceof Entity) {
        throw new MeshError("wrong.3mfFileDeclaresTexts");
      }
      throw new MeshError("wrong.3mfFileDamagedSave");
    } catch (Bomb e) {
      throw bomb();
    }
  }

  /** The text of a part; left to itself the parser prints on the screen about broken letters. */
  private static Reader text(InputStream in) {
    return new InputStreamReader(in, StandardCharsets.UTF_8);
  }

  private static MeshError bomb() {
    return new MeshError("wrong.3mfFileUnpacksFar");
  }

  private static final class Bomb extends IOException {
    private static final long serialVersionUID = 1L;
  }

  private static final class Entity extends XMLStreamException {
    private static final long serialVersionUID = 1L;
  }

  /** Stops at texts that the file declares itself. */
  private static final class Guarded extends javax.xml.stream.util.StreamReaderDelegate {
    Guarded(XMLStreamReader reader) {
      super(reader);
    }

    @Override
    public int next() throws XMLStreamException {
      int event = super.next();
      if (event == XMLStreamConstants.DTD
          || event == XMLStreamConstants.ENTITY_REFERENCE
          || event == XMLStreamConstants.ENTITY_DECLARATION) {
        throw new Entity();
      }
      return event;
    }
  }

  /** Counts what is unpacked. */
  private static final class Counted extends FilterInputStream {
    private final long packed;
    private long unpacked;

    Counted(InputStream in, long packed) {
      super(in);
      this.packed = Math.max(packed, 1);
    }

    @Override
    public int read() throws IOException {
      int b = super.read();
      count(b < 0 ? 0 : 1);
      return b;
    }

    @Override
    public int read(byte[] to, int from, int length) throws IOException {
      int n = super.read(to, from, length);
      count(Math.max(n, 0));
      return n;
    }

    private void count(int n) throws Bomb {
      unpacked += n;
      boolean swollen = unpacked > SUSPICIOUS && unpacked / packed > MOST_RATIO;
      if (swollen || unpacked > MOST_UNPACKED) {
        throw new Bomb();
      }
    }
  }
}
