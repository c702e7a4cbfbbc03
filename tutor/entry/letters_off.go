package entry

// LettersOff is the number of letters to put in, leave out or change between one word
// and another (Levenshtein), a swap of neighbours counting as one.
func LettersOff(from, to string) int {
	a, b := []rune(from), []rune(to)
	rows := [3][]int{make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)}
	for j := range rows[1] {
		rows[1][j] = j
	}
	for i := range a {
		older, last, row := rows[i%3], rows[(i+1)%3], rows[(i+2)%3]
		row[0] = i + 1
		for j := range b {
			change := last[j]
			if a[i] != b[j] {
				change++
			}
			row[j+1] = min(change, last[j+1]+1, row[j]+1)
			if i > 0 && j > 0 && a[i] == b[j-1] && a[i-1] == b[j] {
				row[j+1] = min(row[j+1], older[j-1]+1)
			}
		}
	}
	return rows[(len(a)+1)%3][len(b)]
}
