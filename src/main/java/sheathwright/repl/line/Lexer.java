package sheathwright.repl.line;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheathwright.repl.line.Token.Kind;

/**
 * Takes a line apart. Texts, blocks of text, characters and comments pass whole; digits and the
 * letters that touch them are one word; a quote that touches a digit on its left is a mark of feet
 * or inches.
 */
final class Lexer {

  private static final String DIGIT_BEFORE = "(?<=[0-9½¼¾⅛⅜⅝⅞])";
  private static final Pattern TOKEN =
      Pattern.compile(
          "(?<skip>\\s+|//[^\\n]*|(?s:/\\*.*?(?:\\*/|\\z)))"
              + "|(?<feet>"
              + DIGIT_BEFORE
              + "['′’])"
              + "|(?<inches>"
              + DIGIT_BEFORE
              + "[\"″”])"
              + "|(?<text>\"\"\"(?s:.*?)(?<!\\\\)\"\"\"|\"(?:\\\\.|[^\"\\\\\\n])*\"|“[^”\\n]*”|'(?:\\\\.[^']*|[^'\\\\\\n])')"
              + "|(?<money>\\$(?:\\d+(?:,\\d{3}(?!\\d))*(?:\\.\\d+)?|\\.\\d+))"
              + "|(?<word>[\\p{L}_$][\\p{L}\\p{N}_$&&[^½¼¾⅛⅜⅝⅞]]*)"
              + "|(?<number>(?:\\d+|(?=\\.\\d))(?:[eE][+-]\\d+|\\.(?=\\d)|[0-9\\p{L}_]|×(?=\\d))*)"
              + "|(?<fraction>[½¼¾⅛⅜⅝⅞])"
              + "|(?<numbered>#\\d+)"
              + "|(?<sign>->|::|\\.\\.\\.|>>>=|<<=|>>=|[-+*/%&|^=!<>]=|\\+\\+|--|&&|\\|\\||(?s:.))");

  private static final List<String> KINDS =
      List.of("feet", "inches", "text", "money", "word", "number", "fraction", "numbered", "sign");

  private Lexer() {}

  /** The tokens of a line, comments and blanks left out. */
  static List<Token> tokens(String line) {
    List<Token> tokens = new ArrayList<>();
    Matcher token = TOKEN.matcher(line);
    while (token.find()) {
      for (String kind : KINDS) {
        if (token.group(kind) != null) {
          String text = plain(token.group());
          tokens.add(
              new Token(
                  Kind.valueOf(kind.toUpperCase(java.util.Locale.ROOT)),
                  text,
                  token.start(),
                  token.end()));
        }
      }
    }
    return tokens;
  }

  /** Whether a line has to go to Java unread: it writes letters as numbers outside its texts. */
  static boolean isUnreadable(List<Token> tokens) {
    return tokens.stream().anyMatch(token -> token.is("\\"));
  }

  private static String plain(String text) {
    return switch (text) {
      case "×" -> "*";
      case "–", "−" -> "-";
      case "÷" -> "/";
      default ->
          text.startsWith("“") && text.length() > 1
              ? '"' + text.substring(1, text.length() - 1) + '"'
              : text.startsWith("\"") || text.startsWith("'") ? text : text.replace('×', 'x');
    };
  }
}
