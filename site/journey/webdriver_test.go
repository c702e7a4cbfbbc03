//go:build browsers

package journey

import (
	"bufio"
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"net"
	"net/http"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// driver carries out commands of W3C WebDriver (w3.org/TR/webdriver2), by the
// names that Firefox gives them.
type driver interface {
	command(name string, params map[string]any) (json.RawMessage, error)
}

// routes are the commands as HTTP has them (§6.3 of the standard); {id} is the
// parameter of that name.
var routes = map[string][2]string{
	"WebDriver:NewSession":         {"POST", ""},
	"WebDriver:DeleteSession":      {"DELETE", ""},
	"WebDriver:Navigate":           {"POST", "/url"},
	"WebDriver:ExecuteAsyncScript": {"POST", "/execute/async"},
	"WebDriver:FindElement":        {"POST", "/element"},
	"WebDriver:GetActiveElement":   {"GET", "/element/active"},
	"WebDriver:ElementClick":       {"POST", "/element/{id}/click"},
	"WebDriver:ElementSendKeys":    {"POST", "/element/{id}/value"},
	"WebDriver:PerformActions":     {"POST", "/actions"},
	"WebDriver:SetWindowRect":      {"POST", "/window/rect"},
}

// overHTTP talks to a driver that is a server of its own.
type overHTTP struct{ base, session string }

func (d *overHTTP) command(name string, params map[string]any) (json.RawMessage, error) {
	route, known := routes[name]
	if !known {
		return nil, fmt.Errorf("no route for %s", name)
	}
	path := d.base + "/session"
	if name != "WebDriver:NewSession" {
		path += "/" + d.session + route[1]
	}
	if id, ok := params["id"].(string); ok {
		path = strings.Replace(path, "{id}", id, 1)
	}
	var body io.Reader
	if route[0] == "POST" {
		content, err := json.Marshal(params)
		if err != nil {
			return nil, err
		}
		body = bytes.NewReader(content)
	}
	request, err := http.NewRequest(route[0], path, body)
	if err != nil {
		return nil, err
	}
	request.Header.Set("Content-Type", "application/json; charset=utf-8")
	client := http.Client{Timeout: 2 * patience}
	answer, err := client.Do(request)
	if err != nil {
		return nil, err
	}
	defer answer.Body.Close()
	var got struct{ Value json.RawMessage }
	if err := json.NewDecoder(answer.Body).Decode(&got); err != nil {
		return nil, err
	}
	if answer.StatusCode != http.StatusOK {
		return nil, fmt.Errorf("%s: %s", name, got.Value)
	}
	return got.Value, nil
}

// marionette talks to Firefox itself: each message is its length, a colon, and
// JSON; [0, id, name, parameters] asks, [1, id, error, result] answers
// (firefox-source-docs.mozilla.org/testing/marionette/Protocol.html).
type marionette struct {
	socket net.Conn
	from   *bufio.Reader
	last   int
}

func dialMarionette(address string) (*marionette, error) {
	socket, err := net.Dial("tcp", address)
	if err != nil {
		return nil, err
	}
	m := &marionette{socket: socket, from: bufio.NewReader(socket)}
	if _, err = m.read(); err != nil { // it says which version it speaks
		return nil, err
	}
	return m, nil
}

func (m *marionette) read() ([]byte, error) {
	if err := m.socket.SetReadDeadline(time.Now().Add(2 * patience)); err != nil {
		return nil, err
	}
	length, err := m.from.ReadString(':')
	if err != nil {
		return nil, err
	}
	n, err := strconv.Atoi(strings.TrimSuffix(length, ":"))
	if err != nil {
		return nil, err
	}
	message := make([]byte, n)
	_, err = io.ReadFull(m.from, message)
	return message, err
}

func (m *marionette) command(name string, params map[string]any) (json.RawMessage, error) {
	if params == nil {
		params = map[string]any{}
	}
	m.last++
	message, err := json.Marshal([]any{0, m.last, name, params})
	if err != nil {
		return nil, err
	}
	if _, err := fmt.Fprintf(m.socket, "%d:%s", len(message), message); err != nil {
		return nil, err
	}
	raw, err := m.read()
	if err != nil {
		return nil, err
	}
	var answer [4]json.RawMessage
	if err := json.Unmarshal(raw, &answer); err != nil {
		return nil, err
	}
	if string(answer[2]) != "null" {
		return nil, fmt.Errorf("%s: %s", name, answer[2])
	}
	var got struct{ Value json.RawMessage }
	if err := json.Unmarshal(answer[3], &got); err == nil && got.Value != nil {
		return got.Value, nil
	}
	return answer[3], nil
}

// driven is a tab by way of a driver.
type driven struct {
	t        testing.TB
	driver   driver
	reported func() []string
}

func (d driven) do(name string, params map[string]any) json.RawMessage {
	d.t.Helper()
	got, err := d.driver.command(name, params)
	require.NoError(d.t, err)
	return got
}

func (d driven) visit(address string) { d.do("WebDriver:Navigate", map[string]any{"url": address}) }
func (d driven) troubles() []string   { return d.reported() }

func (d driven) value(expression string) (json.RawMessage, error) {
	script := `const done = arguments[arguments.length - 1];
		Promise.resolve().then(() => (` + expression + `)).then((v) => done(JSON.stringify([v ?? null])), (e) => done(JSON.stringify(String(e))));`
	raw, err := d.driver.command("WebDriver:ExecuteAsyncScript", map[string]any{"script": script, "args": []any{}})
	if err != nil {
		return nil, err
	}
	var text string
	if err := json.Unmarshal(raw, &text); err != nil {
		return nil, err
	}
	var got []json.RawMessage
	if json.Unmarshal([]byte(text), &got) != nil || len(got) != 1 {
		return nil, fmt.Errorf("%s: %s", expression, text)
	}
	return got[0], nil
}

// element is the id of an element in an answer: the value under its one key.
func (d driven) element(raw json.RawMessage) string {
	d.t.Helper()
	var reference map[string]string
	require.NoError(d.t, json.Unmarshal(raw, &reference), "%s", raw)
	for _, id := range reference {
		return id
	}
	require.Fail(d.t, "no element", "%s", raw)
	return ""
}

func (d driven) tap(selector string) {
	d.t.Helper()
	id := d.element(d.do("WebDriver:FindElement", map[string]any{"using": "css selector", "value": selector}))
	d.do("WebDriver:ElementClick", map[string]any{"id": id})
}

func (d driven) drag(from, to spot) {
	d.t.Helper()
	move := func(s spot) map[string]any {
		return map[string]any{"type": "pointerMove", "duration": 50, "origin": "viewport", "x": int(s.X + 0.5), "y": int(s.Y + 0.5)}
	}
	d.do("WebDriver:PerformActions", map[string]any{"actions": []any{map[string]any{
		"type": "pointer", "id": "mouse", "parameters": map[string]any{"pointerType": "mouse"},
		"actions": []any{move(from), map[string]any{"type": "pointerDown", "button": 0},
			move(between(from, to, 0.5)), move(to), map[string]any{"type": "pointerUp", "button": 0}},
	}}})
}

func (d driven) press(keys string) {
	d.t.Helper()
	id := d.element(d.do("WebDriver:GetActiveElement", nil))
	keys = strings.NewReplacer("\n", "\uE007", "\b", "\uE003").Replace(keys) // §17.4.2 of the standard: Enter, Backspace
	d.do("WebDriver:ElementSendKeys", map[string]any{"id": id, "text": keys})
}
