package main

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"net"
	"net/http"
	"os"
	"os/signal"
	"path/filepath"
	"strconv"
	"syscall"
	"time"

	"closingside/site/publish"
)

// serveVerb serves the page for a look, or for a room on one network.
type serveVerb struct {
	Path string   `arg:"" optional:"" name:"folder" help:"What closingside build wrote, a folder or one file. Without it the page is built and served from memory."`
	Set  []string `placeholder:"FILE" help:"A set to list on the home screen of the page served from memory; may be given again."`
	Port int      `default:"8080" help:"The port, 1 to 65535; 0 takes a free one."`
	Host string   `default:"127.0.0.1" help:"The address to listen on; 0.0.0.0 lets other devices in."`
}

// Run serves until interrupted.
func (v serveVerb) Run(s streams) error {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	return v.serve(ctx, s)
}

func (v serveVerb) serve(ctx context.Context, s streams) error {
	if v.Port < 0 || v.Port > 65535 {
		return wrongInput("--port %d: a port is a number from 0 to 65535", v.Port)
	}
	files, err := v.files(ctx)
	if err != nil {
		return err
	}
	listener, err := net.Listen("tcp", net.JoinHostPort(v.Host, strconv.Itoa(v.Port)))
	if err != nil {
		return wrongInput("%w; choose another with --port", err)
	}
	fmt.Fprintf(s.out, "http://%s/\n", address(listener.Addr().(*net.TCPAddr)))
	server := &http.Server{Handler: publish.Handler(files), ReadHeaderTimeout: 10 * time.Second}
	done := make(chan error, 1)
	go func() { done <- server.Serve(listener) }()
	select {
	case err := <-done:
		return err
	case <-ctx.Done():
	}
	grace, cancel := context.WithTimeout(context.Background(), 3*time.Second)
	defer cancel()
	if err := server.Shutdown(grace); err != nil && !errors.Is(err, context.DeadlineExceeded) {
		return err
	}
	return nil
}

func (v serveVerb) files(ctx context.Context) (publish.Reader, error) {
	if v.Path == "" {
		return buildFolder(ctx, v.Set)
	}
	if len(v.Set) > 0 {
		return nil, wrongInput("--set: what is in %s has its sets already; closingside build --set writes others", v.Path)
	}
	info, err := os.Stat(v.Path)
	if err != nil {
		return nil, wrongInput("%s: there is no such folder or file; closingside build %s writes one", v.Path, v.Path)
	}
	if !info.IsDir() {
		if filepath.Ext(v.Path) != ".html" {
			return nil, wrongInput("%s: this is no page; a set or problem is served with --set, or by closingside link", v.Path)
		}
		return oneFile(v.Path), nil
	}
	if _, err := os.Stat(filepath.Join(v.Path, "index.html")); err != nil {
		return nil, wrongInput("%s: no index.html there; closingside build %s writes one", v.Path, v.Path)
	}
	return os.DirFS(v.Path).(publish.Reader), nil
}

// oneFile serves a page that is one file, read anew each time.
type oneFile string

// ReadFile is the page, whatever it is called.
func (f oneFile) ReadFile(name string) ([]byte, error) {
	if name != "index.html" && name != filepath.Base(string(f)) {
		return nil, fs.ErrNotExist
	}
	return os.ReadFile(string(f))
}

// address is where a browser on this machine finds the listener.
func address(a *net.TCPAddr) string {
	host := "localhost"
	if !a.IP.IsLoopback() && !a.IP.IsUnspecified() {
		host = a.IP.String()
	}
	return net.JoinHostPort(host, strconv.Itoa(a.Port))
}
