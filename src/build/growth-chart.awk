# Draws docs/pictures/growth.csv as a chart: sizes from a tenth to ten times the usual across, seconds of processor time up, both
# in powers of ten. Of each kind the middle one of its sizes is the usual.
function x(size, usual) { return 70 + (log(size / usual) / log(10) + 1) * 210 }
function y(seconds) { return 300 - (log(seconds) / log(10)) * 130 }
BEGIN {
  FS = ","
  split("#3b4a3f #9a2f1c #b07d12 #2f6f8f #7a5c8f #5f8f4a #c0562f #444444", colors, " ")
  print "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"704\" height=\"372\" font-family=\"sans-serif\" font-size=\"13\">"
  print "<title>Processor seconds by size</title>"
  print "<rect width=\"100%\" height=\"100%\" rx=\"6\" fill=\"#fbf8f1\" stroke=\"#8a7f6a\"/>"
  for (power = 0; power <= 2; power++) {
    printf "<line x1=\"70\" x2=\"490\" y1=\"%.1f\" y2=\"%.1f\" stroke=\"#d8d0bf\"/>\n", y(10 ^ power), y(10 ^ power)
    printf "<text x=\"60\" y=\"%.1f\" text-anchor=\"end\">%d s</text>\n", y(10 ^ power) + 4, 10 ^ power
  }
  split("a tenth|usual|ten times", names, "|")
  for (i = 1; i <= 3; i++) printf "<text x=\"%d\" y=\"352\" text-anchor=\"middle\">%s</text>\n", 70 + (i - 1) * 210, names[i]
  print "<line x1=\"70\" y1=\"300\" x2=\"490\" y2=\"40\" stroke=\"#d8d0bf\" stroke-dasharray=\"5 4\"/>"
  print "<text x=\"496\" y=\"36\" fill=\"#8a7f6a\">in step with the size</text>"
}
NR > 1 {
  if (!($1 in count)) order[++kinds] = $1
  count[$1]++
  size[$1, count[$1]] = $2
  taken[$1, count[$1]] = $3
}
END {
  for (k = 1; k <= kinds; k++) {
    kind = order[k]
    printf "<polyline fill=\"none\" stroke-width=\"2\" stroke=\"%s\" points=\"", colors[k]
    for (i = 1; i <= count[kind]; i++) printf "%.1f,%.1f ", x(size[kind, i], size[kind, 2]), y(taken[kind, i])
    print "\"/>"
    printf "<line x1=\"520\" x2=\"540\" y1=\"%d\" y2=\"%d\" stroke-width=\"2\" stroke=\"%s\"/>\n", 90 + 24 * k, 90 + 24 * k, colors[k]
    printf "<text x=\"548\" y=\"%d\">%s, %d to %d</text>\n", 94 + 24 * k, kind, size[kind, 1], size[kind, count[kind]]
  }
  print "</svg>"
}
