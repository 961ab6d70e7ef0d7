# The facts of a job (the second file) with those of a list (the first) put in their place, or added behind them.
# usage: awk -F, -f facts.awk ADDED JOB
NR == FNR {
  if (FNR > 1) {
    added[$1] = $0
    order[++many] = $1
  }
  next
}
$1 in added {
  print added[$1]
  delete added[$1]
  next
}
{ print }
END {
  for (i = 1; i <= many; i++) if (order[i] in added) print added[order[i]]
}
