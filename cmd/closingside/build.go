package main

import (
	"context"
	"errors"
	"fmt"

	"closingside/site/publish"
)

// buildVerb writes the folder to publish.
type buildVerb struct {
	Dir   string `arg:"" optional:"" default:"build/site" help:"The folder to write."`
	Force bool   `help:"Write into a folder that holds other files. They are kept."`
}

// Run builds the engine and writes the folder.
func (v buildVerb) Run(s streams) error {
	folder, err := buildFolder(context.Background())
	if err != nil {
		return err
	}
	if err := folder.Write(v.Dir, v.Force); errors.Is(err, publish.ErrNotOurs) {
		return wrongInput("%w; name an empty folder, or add --force", err)
	} else if err != nil {
		return err
	}
	fmt.Fprintf(s.out, "%s: version %s, %d files to copy to a static web host (files.txt lists them with their compressed copies)\n", v.Dir, folder.Version, len(folder.Files))
	return nil
}

func buildFolder(ctx context.Context) (*publish.Folder, error) {
	engine, err := publish.Engine(ctx, ".")
	if err != nil {
		return nil, err
	}
	return publish.Build(engine)
}
