# Two commands matter: make run (serves the page, prints its address) and make test (installs what
# it needs and runs everything). make alone lists the targets.
SHELL := bash
.SHELLFLAGS := -eu -o pipefail -c
.DEFAULT_GOAL := help
.PHONY: help run install build test test-browsers check unit explore wasm page tools browser bench fuzz clean
PORT ?= 8080
FUZZTIME ?= 20s
# Made-up hostile texts for the reader, and requests for the page (make fuzz).
HOSTILE ?= 200000
HOSTILE_REQUESTS ?= 20000

# Tests in WebAssembly run under Node with a short environment: the runtime takes 8 kB of it at most.
WASM_PACKAGES = ./wasm ./site ./site/html
# The packages with property tests, which draw their problems from a seed.
PROPERTY = go list -f '{{.ImportPath}} {{.TestImports}} {{.XTestImports}}' ./... | awk '/pgregory.net\/rapid/ {print $$1}'
SEED ?= 20261126
CHECKS ?= 1000

GOROOT_DIR = $(shell go env GOROOT)

help: ## list the targets
	@grep -hE '^[a-z-]+:.*## ' $(MAKEFILE_LIST) | sed -E 's/^([a-z-]+):.*## /\1\t/' | expand -t 16

run: ## build the engine and serve the page (PORT=8080)
	go run ./cmd/closingside serve --port $(PORT)

install: ## put the command, the engine inside it, into Go's folder of commands
	mkdir -p site/publish/shipped
	GOOS=js GOARCH=wasm go build -trimpath -buildvcs=false -ldflags="-s -w" -o site/publish/shipped/engine.wasm ./wasm
	cp "$(GOROOT_DIR)/lib/wasm/wasm_exec.js" site/publish/shipped/wasm_exec.js
	go install -tags shipped ./cmd/closingside

build: ## write the folder to publish: build/site
	go run ./cmd/closingside build build/site

test: browser tools check wasm unit ## install what is needed and run every test

# Vet also reads what only another build takes in.
check: ## formatting, vet, staticcheck
	@test -z "$$(gofmt -l .)" || { echo "gofmt would change:"; gofmt -l .; exit 1; }
	go vet ./...
	go tool staticcheck ./...
	GOOS=js GOARCH=wasm go vet ./wasm ./site/journey/speed
	GOOS=js GOARCH=wasm go vet -tags sink ./wasm
	go vet -tags browsers ./site/journey

test-browsers: browser ## the core journey in Chromium, Firefox and WebKitGTK, which it installs (Debian)
	@missing=; for need in firefox-esr:firefox-esr WebKitWebDriver:webkit2gtk-driver Xvfb:xvfb; do \
		command -v "$${need%%:*}" >/dev/null || missing="$$missing $${need##*:}"; done; \
	if [ -n "$$missing" ]; then command -v apt-get >/dev/null || { echo "Install these first:$$missing"; exit 1; }; \
		echo "installing$$missing"; apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $$missing >/dev/null; fi
	go test -tags browsers -count=1 -timeout 1h -v -run '^(TestCoreJourney|TestFirefox|TestWebKit)$$' ./site/journey

# A seed makes a failure today a failure tomorrow; make explore looks where no seed has been.
unit: ## native tests, browser journeys among them
	@property=$$($(PROPERTY)); \
	go test -timeout 2h $$property -rapid.seed=$(SEED); \
	go test -timeout 2h $$(go list ./... | grep -vxF "$$property")

explore: ## the property tests on problems nobody has seen, CHECKS of each
	go test -timeout 3h $$($(PROPERTY)) -rapid.checks=$(CHECKS)

page: ## the browser journeys alone
	go test -count=1 -timeout 2h ./site/journey

wasm: ## tests of what runs in the browser, as WebAssembly under Node
	env -i PATH="$$PATH" HOME="$$HOME" GOOS=js GOARCH=wasm go test -timeout 1h -short -exec "$(GOROOT_DIR)/lib/wasm/go_js_wasm_exec" $(WASM_PACKAGES)
	env -i PATH="$$PATH" HOME="$$HOME" GOOS=js GOARCH=wasm go test -timeout 1h -run TestASeedDrawsTheSameEverywhere -exec "$(GOROOT_DIR)/lib/wasm/go_js_wasm_exec" ./tutor/draw

# What is not there yet is installed; what is there is used.
browser:
	@for b in "$${CHROMIUM:-}" chromium chromium-browser google-chrome google-chrome-stable; do \
		if [ -n "$$b" ] && command -v "$$b" >/dev/null; then exit 0; fi; done; \
	if command -v apt-get >/dev/null; then echo "installing chromium"; \
		apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends chromium >/dev/null; \
	else echo "No Chromium found: install one, or name it with CHROMIUM=..."; exit 1; fi

tools: testdata/npm/node_modules/.package-lock.json
	@command -v node >/dev/null || { command -v apt-get >/dev/null && apt-get install -y -qq nodejs >/dev/null; }
	@command -v java >/dev/null || { command -v apt-get >/dev/null && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends default-jre-headless >/dev/null; }

testdata/npm/node_modules/.package-lock.json: testdata/npm/package-lock.json
	@command -v npm >/dev/null || { apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends npm >/dev/null; }
	cd testdata/npm && npm ci --ignore-scripts --no-audit --no-fund --omit-lockfile-registry-resolved
	@touch $@

bench: browser tools ## figures: Go benchmarks, checks against mathjs, the engine's size and start against an empty program's
	go test -run '^$$' -bench . -benchtime 0.3s $$(go list ./... | grep -v /site/journey)
	go test -run '^$$' -bench . -benchtime 1x -timeout 20m ./site/journey

fuzz: ## every fuzz target for FUZZTIME each; HOSTILE texts thrown together for the reader, HOSTILE_REQUESTS for the page
	go test -count=1 -timeout 3h ./tutor/entry -run Hostile -hostile $(HOSTILE)
	go test -count=1 -timeout 3h ./site -run HostileSessions -hostile $(HOSTILE_REQUESTS)
	@for pkg in $$(go list ./...); do \
		for f in $$(go test -list '^Fuzz' $$pkg | grep '^Fuzz' || true); do \
			echo "$$pkg $$f"; go test -run '^$$' -fuzz "^$$f\$$" -fuzztime $(FUZZTIME) -fuzzminimizetime 1s $$pkg; done; done

clean: ## remove what was built
	rm -rf build testdata/npm/node_modules
