package site

// Limits on what is read: a request is a few hundred bytes in earnest.
const (
	maxFields = 200
	maxLine   = 1 << 16 // bytes of one request
)

// Form is a request as the page serialised it: names and values in order.
type Form []Field

// Field is one name and its value.
type Field struct{ Name, Value string }

// Get is the first value called name, or "".
func (f Form) Get(name string) string {
	v, _ := f.Lookup(name)
	return v
}

// Lookup is the first value called name, and whether there is one.
func (f Form) Lookup(name string) (string, bool) {
	for _, field := range f {
		if field.Name == name {
			return field.Value, true
		}
	}
	return "", false
}

// ReadForm reads application/x-www-form-urlencoded as the URL standard does
// (url.spec.whatwg.org, §5.1): it never fails, a broken escape stands for
// itself. Beyond maxLine bytes or maxFields fields the rest is left out.
func ReadForm(line string) Form {
	line = line[:min(len(line), maxLine)]
	var f Form
	for line != "" && len(f) < maxFields {
		var pair string
		pair, line = cut(line, '&')
		if pair == "" {
			continue
		}
		name, value := cut(pair, '=')
		f = append(f, Field{unescape(name), unescape(value)})
	}
	return f
}

// Line is the form as one line, the inverse of ReadForm.
func (f Form) Line() string {
	var b []byte
	for i, field := range f {
		if i > 0 {
			b = append(b, '&')
		}
		b = appendEscaped(b, field.Name)
		b = append(b, '=')
		b = appendEscaped(b, field.Value)
	}
	return string(b)
}

func cut(s string, at byte) (before, after string) {
	for i := range len(s) {
		if s[i] == at {
			return s[:i], s[i+1:]
		}
	}
	return s, ""
}

func unescape(s string) string {
	b := make([]byte, 0, len(s))
	for i := 0; i < len(s); i++ {
		switch c := s[i]; {
		case c == '+':
			b = append(b, ' ')
		case c == '%' && i+2 < len(s) && digit(s[i+1]) < 16 && digit(s[i+2]) < 16:
			b = append(b, digit(s[i+1])<<4|digit(s[i+2]))
			i += 2
		default:
			b = append(b, c)
		}
	}
	return string([]rune(string(b))) // bytes that are not UTF-8 become U+FFFD
}

// digit is the value of a hexadecimal digit, 16 for anything else.
func digit(c byte) byte {
	switch {
	case c >= '0' && c <= '9':
		return c - '0'
	case c >= 'a' && c <= 'f':
		return c - 'a' + 10
	case c >= 'A' && c <= 'F':
		return c - 'A' + 10
	}
	return 16
}

func appendEscaped(b []byte, s string) []byte {
	const hex = "0123456789ABCDEF"
	for i := range len(s) {
		switch c := s[i]; {
		case c == ' ':
			b = append(b, '+')
		case c >= 'a' && c <= 'z', c >= 'A' && c <= 'Z', c >= '0' && c <= '9', c == '*', c == '-', c == '.', c == '_':
			b = append(b, c)
		default:
			b = append(b, '%', hex[c>>4], hex[c&15])
		}
	}
	return b
}
