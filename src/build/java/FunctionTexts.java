import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.stream.Collectors.joining;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.EndElementTree;
import com.sun.source.doctree.EntityTree;
import com.sun.source.doctree.ErroneousTree;
import com.sun.source.doctree.LinkTree;
import com.sun.source.doctree.LiteralTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ReturnTree;
import com.sun.source.doctree.SeeTree;
import com.sun.source.doctree.StartElementTree;
import com.sun.source.doctree.TextTree;
import com.sun.source.doctree.ThrowsTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaFileObject;
import javax.tools.ToolProvider;

/**
 * Collects the doc comments of the library functions into one properties file, and fails where a
 * part is missing; beside it goes the version, out of the build's own file. The build runs this
 * file as it stands, in the project's folder:
 *
 * <pre>java FunctionTexts.java SOURCE_FOLDER PROPERTIES_FILE</pre>
 *
 * <p>Sources are parsed, not compiled, so nothing but the JDK is needed to read them.
 */
final class FunctionTexts extends TreePathScanner<Void, Void> {

  private static final String MARK = "LibraryFunction";
  private static final String LIMITS = "Does not cover";
  private static final Set<String> BLOCKS =
      Set.of("p", "pre", "ul", "ol", "li", "dl", "dt", "dd", "table", "tr", "blockquote", "div");

  private final DocTrees docTrees;
  private final Properties texts = new Properties();
  private final Set<String> functions = new TreeSet<>();
  private final List<String> problems = new ArrayList<>();

  private FunctionTexts(DocTrees docTrees) {
    this.docTrees = docTrees;
  }

  public static void main(String[] arguments) throws IOException {
    var complaints = new DiagnosticCollector<JavaFileObject>();
    var compiler = ToolProvider.getSystemJavaCompiler();
    try (var files = compiler.getStandardFileManager(complaints, null, UTF_8);
        var found = Files.walk(Path.of(arguments[0]))) {
      var sources = found.filter(file -> file.toString().endsWith(".java")).sorted().toList();
      var parsed = files.getJavaFileObjectsFromPaths(sources);
      var options = List.of("-proc:none");
      var task = (JavacTask) compiler.getTask(null, files, complaints, options, null, parsed);
      var reader = new FunctionTexts(DocTrees.instance(task));
      for (CompilationUnitTree unit : task.parse()) {
        reader.scan(unit, null);
      }
      complaints.getDiagnostics().forEach(syntax -> reader.problems.add(syntax.toString()));
      reader.finish(Path.of(arguments[1]));
      Files.writeString(Path.of(arguments[1]).resolveSibling("../version").normalize(), version());
    }
  }

  private static String version() throws IOException {
    var version =
        Pattern.compile("<artifactId>sheathwright</artifactId>\\s*<version>([^<]+)</version>")
            .matcher(Files.readString(Path.of("pom.xml")));
    if (!version.find()) {
      throw new IOException("pom.xml does not say which version this is");
    }
    return version.group(1) + "\n";
  }

  private void finish(Path file) throws IOException {
    if (!problems.isEmpty()) {
      problems.forEach(System.err::println);
      System.exit(1);
    }
    texts.setProperty("functions", String.join(",", functions));
    var stored = new ByteArrayOutputStream();
    texts.store(stored, null);
    Stream<String> lines = stored.toString(ISO_8859_1).lines();
    Files.createDirectories(file.toAbsolutePath().getParent());
    Files.writeString(
        file, // without the date that store() puts on top
        lines.filter(line -> !line.startsWith("#")).sorted().collect(joining("\n", "", "\n")));
  }

  @Override
  public Void visitClass(ClassTree type, Void nothing) {
    if (type.getKind() == Tree.Kind.RECORD) {
      columns(type);
    }
    return super.visitClass(type, nothing);
  }

  /** What a record says of each of its parts that has a column. */
  private void columns(ClassTree record) {
    List<String> parts =
        record.getMembers().stream()
            .filter(member -> member instanceof VariableTree part && hasColumn(part))
            .map(member -> ((VariableTree) member).getName().toString())
            .toList();
    if (parts.isEmpty()) {
      return;
    }
    DocCommentTree comment = docTrees.getDocCommentTree(getCurrentPath());
    Map<String, String> described = described(comment);
    for (String part : parts) {
      if (described.getOrDefault(part, "").isEmpty()) {
        problems.add(binaryName(getCurrentPath()) + " has no @param " + part);
      }
      texts.setProperty(
          binaryName(getCurrentPath()) + ".param." + part, described.getOrDefault(part, ""));
    }
  }

  private static boolean hasColumn(VariableTree part) {
    return part.getModifiers().getAnnotations().stream()
        .anyMatch(annotation -> annotation.getAnnotationType().toString().equals("Column"));
  }

  private Map<String, String> described(DocCommentTree comment) {
    Map<String, String> described = new LinkedHashMap<>();
    if (comment != null) {
      for (DocTree tag : comment.getBlockTags()) {
        if (tag instanceof ParamTree param && !param.isTypeParameter()) {
          described.put(param.getName().toString(), plain(param.getDescription()));
        }
      }
    }
    return described;
  }

  @Override
  public Void visitMethod(MethodTree method, Void nothing) {
    boolean marked =
        method.getModifiers().getAnnotations().stream()
            .map(annotation -> annotation.getAnnotationType().toString())
            .anyMatch(type -> type.equals(MARK) || type.endsWith("." + MARK));
    if (marked) {
      new Comment(getCurrentPath(), method).read();
    }
    return super.visitMethod(method, nothing);
  }

  /** The doc comment of one function. */
  private final class Comment {

    private final TreePath path;
    private final MethodTree method;
    private final String name;
    private final DocCommentTree comment;

    Comment(TreePath path, MethodTree method) {
      this.path = path;
      this.method = method;
      this.name = qualifiedName();
      this.comment = docTrees.getDocCommentTree(path);
    }

    void read() {
      if (!method.getModifiers().getFlags().containsAll(Set.of(Modifier.PUBLIC, Modifier.STATIC))) {
        problem("is marked as a library function but is not public static");
      }
      if (!functions.add(name)) {
        problem("has the name of another library function in its class");
      }
      if (comment == null) {
        problem("has no doc comment");
        return;
      }
      body();
      parameters();
      require("return", "@return", tags(ReturnTree.class, ReturnTree::getDescription));
      require("throws", "@throws", tags(ThrowsTree.class, ThrowsTree::getDescription));
      require("source", "@see", tags(SeeTree.class, SeeTree::getReference));
    }

    private void body() {
      List<Block> blocks = blocks();
      require("summary", "first sentence", plain(comment.getFirstSentence()));
      require("formula", "formula in <pre>", first(blocks, block -> block.pre && !block.code));
      require(
          "example", "<pre>{@code example}</pre>", first(blocks, block -> block.pre && block.code));
      require(
          "limits", "\"" + LIMITS + " ...\"", paragraphs(blocks, text -> text.startsWith(LIMITS)));
      put("notes", paragraphs(blocks, text -> !text.startsWith(LIMITS)));
    }

    private void parameters() {
      Map<String, String> described = described(comment);
      List<String> names = new ArrayList<>();
      for (VariableTree parameter : method.getParameters()) {
        String each = parameter.getName().toString();
        names.add(each);
        require("param." + each, "@param " + each, described.getOrDefault(each, ""));
      }
      put("parameters", String.join(",", names));
      described.keySet().removeAll(names);
      described.keySet().forEach(each -> problem("has no parameter for its @param " + each));
    }

    /** What follows the first sentence, cut at every tag that starts or ends a paragraph. */
    private List<Block> blocks() {
      List<Block> blocks = new ArrayList<>(List.of(new Block(false)));
      for (DocTree part : comment.getBody()) {
        if (part instanceof StartElementTree start && BLOCKS.contains(start.getName().toString())) {
          blocks.add(new Block(start.getName().contentEquals("pre")));
        } else if (part instanceof EndElementTree end
            && BLOCKS.contains(end.getName().toString())) {
          blocks.add(new Block(false));
        } else {
          Block last = blocks.get(blocks.size() - 1);
          last.code |= part.getKind() == DocTree.Kind.CODE;
          last.text.append(written(part));
        }
      }
      blocks.removeIf(block -> block.text.toString().isBlank());
      return blocks;
    }

    private String first(List<Block> blocks, Predicate<Block> wanted) {
      return blocks.stream().filter(wanted).findFirst().map(Block::lines).orElse("");
    }

    private String paragraphs(List<Block> blocks, Predicate<String> wanted) {
      Stream<Block> prose = blocks.stream().filter(block -> !block.pre);
      return prose
          .map(block -> oneLine(block.text.toString()))
          .filter(wanted)
          .collect(joining("\n"));
    }

    private <T extends DocTree> String tags(
        Class<T> kind, Function<T, List<? extends DocTree>> text) {
      return comment.getBlockTags().stream()
          .filter(kind::isInstance)
          .map(tag -> plain(text.apply(kind.cast(tag))))
          .map(said -> said.replaceAll("^\"|\"$", ""))
          .filter(said -> !said.isEmpty())
          .collect(joining("; "));
    }

    private void require(String part, String missing, String text) {
      if (text.isEmpty()) {
        problem("has no " + missing);
      }
      put(part, text);
    }

    private void put(String part, String text) {
      texts.setProperty(name + "." + part, text);
    }

    private void problem(String what) {
      CompilationUnitTree unit = path.getCompilationUnit();
      long start = docTrees.getSourcePositions().getStartPosition(unit, method);
      long line = unit.getLineMap().getLineNumber(start);
      String file = unit.getSourceFile().getName();
      problems.add("%s:%d: %s %s".formatted(file, line, method.getName(), what));
    }

    private String qualifiedName() {
      return binaryName(path) + "#" + method.getName();
    }
  }

  private static String binaryName(TreePath path) {
    String owner = "";
    for (TreePath up = path; up != null; up = up.getParentPath()) {
      if (up.getLeaf() instanceof ClassTree type) {
        owner = type.getSimpleName() + (owner.isEmpty() ? "" : "$" + owner);
      }
    }
    var packageName = path.getCompilationUnit().getPackageName();
    return (packageName == null ? "" : packageName + ".") + owner;
  }

  private String plain(List<? extends DocTree> parts) {
    return oneLine(parts.stream().map(this::written).collect(joining()));
  }

  /** The text of one part as a reader sees it; markup has none. */
  private String written(DocTree part) {
    if (part instanceof TextTree text && !(part instanceof ErroneousTree)) {
      return text.getBody();
    } else if (part instanceof LiteralTree literal) {
      return literal.getBody().getBody();
    } else if (part instanceof EntityTree entity && docTrees.getCharacters(entity) != null) {
      return docTrees.getCharacters(entity).replace('\u00a0', ' ');
    } else if (part instanceof LinkTree link) {
      return link.getLabel().isEmpty()
          ? link.getReference().getSignature().replaceFirst("^#", "").replace('#', '.')
          : plain(link.getLabel());
    } else if (part instanceof StartElementTree start) {
      return start.getName().contentEquals("sup") ? "^" : "";
    } else if (part instanceof EndElementTree) {
      return "";
    }
    problems.add("a doc comment cannot be read at: " + oneLine(part.toString()));
    return "";
  }

  /** A paragraph, or what stands between {@code <pre>} and {@code </pre>}. */
  private static final class Block {

    private final boolean pre;
    private final StringBuilder text = new StringBuilder();
    private boolean code;

    Block(boolean pre) {
      this.pre = pre;
    }

    /** The lines that are not blank: an example's without indent, others without the common one. */
    String lines() {
      Stream<String> lines = (" " + text).stripTrailing().stripIndent().lines();
      return lines
          .filter(line -> !line.isBlank())
          .map(line -> code ? line.strip() : line)
          .collect(joining("\n"));
    }
  }

  private static String oneLine(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }
}
