package site

import (
	"net/url"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestReadForm(t *testing.T) {
	rows := []struct {
		line string
		want Form
	}{
		{"", nil},
		{"do=enter&quantity=R&entry=682.6+N", Form{{"do", "enter"}, {"quantity", "R"}, {"entry", "682.6 N"}}},
		{"entry=118%C2%B0+%E2%88%92+%CE%B8", Form{{"entry", "118° − θ"}}},
		{"a&b=&=c&&a=2", Form{{"a", ""}, {"b", ""}, {"", "c"}, {"a", "2"}}},
		{"a=1=2", Form{{"a", "1=2"}}},
		{"a=%&b=%4&c=%zz&d=100%", Form{{"a", "%"}, {"b", "%4"}, {"c", "%zz"}, {"d", "100%"}}},
		{"a=%ff%41", Form{{"a", "�A"}}},
	}
	for _, r := range rows {
		t.Run(r.line, func(t *testing.T) { assert.Equal(t, r.want, ReadForm(r.line)) })
	}
	f := ReadForm("a=1&a=2&b=")
	assert.Equal(t, "1", f.Get("a"))
	assert.Equal(t, "", f.Get("c"))
	_, ok := f.Lookup("b")
	assert.True(t, ok)
	_, ok = f.Lookup("c")
	assert.False(t, ok)
}

func TestReadFormIsBounded(t *testing.T) {
	assert.Len(t, ReadForm(strings.Repeat("a=1&", 1000)), maxFields)
	assert.Len(t, ReadForm("a="+strings.Repeat("x", 1<<20)).Get("a"), maxLine-2)
}

// The standard library writes what we read, and reads what we write.
func TestFormAgainstNetURL(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		names := rapid.SliceOfNDistinct(rapid.StringN(1, 5, -1), 0, 6, rapid.ID[string]).Draw(t, "names")
		values, form := url.Values{}, Form(nil)
		for _, n := range names {
			v := rapid.String().Draw(t, "value")
			values.Set(n, v)
			form = append(form, Field{n, v})
		}
		for _, f := range ReadForm(values.Encode()) {
			require.Equal(t, values.Get(f.Name), f.Value)
		}
		require.Equal(t, form, ReadForm(form.Line()))
		back, err := url.ParseQuery(form.Line())
		require.NoError(t, err)
		require.Equal(t, values, back)
	})
}

func FuzzReadForm(f *testing.F) {
	for _, s := range []string{"", "do=start", "a=%", "%%%&=&+", "a=%ff", "\n"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		once := ReadForm(s)
		require.Equal(t, once, ReadForm(once.Line()), "reading what was written changes nothing")
	})
}
