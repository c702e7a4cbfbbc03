package site

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestStartReplaysTheLog(t *testing.T) {
	Handle([]byte("do=start&hash=&at=1"))
	one := string(Handle([]byte("do=enter&quantity=R&entry=682.6+N&at=2")))
	assert.Contains(t, one, `<li data-verdict="unexplained">682.6 N</li>`)
	Handle([]byte("do=enter&quantity=R&entry=%3Cb%3E&at=3"))
	live := Handle([]byte("do=start&hash=&at=4\ndo=enter&quantity=R&entry=682.6+N&at=2\ndo=enter&quantity=R&entry=%3Cb%3E&at=3"))
	assert.Equal(t, 2, strings.Count(string(live), "<li"))
	assert.Contains(t, string(live), "&lt;b&gt;")
}
