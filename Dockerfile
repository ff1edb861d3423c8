# While no access keys exist the service listens on loopback only, and a container's loopback cannot be reached from
# outside of it. So it runs with the network of its host, and with a volume for its file:
#
#   docker build -t loopwright .
#   docker run --network host -v loopwright:/var/lib/loopwright loopwright
#
# A SQLite file belongs to one process: a second container on the same volume refuses to start.

# The full image has the compiler that better-sqlite3 is built with; the last stage has not.
FROM node:20.20.2-bookworm AS build
WORKDIR /app
# Build the driver here, from source, with the headers of this very Node.
ENV npm_config_build_from_source=true \
    npm_config_nodedir=/usr/local \
    SCARF_ANALYTICS=false
COPY package.json package-lock.json .npmrc ./
RUN npm ci --no-audit --no-fund
COPY tsconfig.json tsconfig.build.json ./
COPY curves curves
COPY models models
COPY api api
COPY openapi openapi
RUN npm run build && npm prune --omit=dev --no-audit --no-fund

# The same Debian release as above, since the driver is linked to its C library.
FROM node:20.20.2-bookworm-slim
WORKDIR /app
ENV NODE_ENV=production \
    DATABASE_URL=file:///var/lib/loopwright/loopwright.sqlite
RUN install -d -o node -g node /var/lib/loopwright
COPY --from=build /app/node_modules node_modules
COPY --from=build /app/dist dist
COPY --from=build /app/openapi openapi
COPY --from=build /app/package.json package.json
USER node
VOLUME /var/lib/loopwright
HEALTHCHECK --interval=30s --timeout=5s --start-period=20s --retries=3 \
  CMD ["node", "-e", "fetch(`http://127.0.0.1:${process.env.PORT || 8080}/healthz`).then((answer) => process.exit(answer.ok ? 0 : 1), () => process.exit(1))"]
# Node is the first process and handles SIGTERM itself; no shell stands between.
CMD ["node", "--enable-source-maps", "dist/api/main.js"]
